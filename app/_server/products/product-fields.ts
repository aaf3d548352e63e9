import type { Refusal } from '@/app/_server/refusal';
import type { WriteTransaction } from '@/prisma/open-book';
import type { Life } from '@/shared/calendar/life';
import { err, ok, type Result } from '@/shared/result/result';
import type { Basis, PolicyKind } from '@/shared/shelf-life/types/policy';
import type { StockUnit } from '@/shared/units/stock-unit';

/** A product as a form gives it. */
export type ProductFields = {
  name: string;
  maker: string;
  kind: string;
  unit: StockUnit;
  densityGramsPerLitre?: number;
  packageSize: number;
  tareMg?: number;
  policyKind: PolicyKind;
  statedLife?: Life;
  statedLifeBasis: Basis;
  openedLife?: Life;
  openedLifeBasis: Basis;
  careWindowDays: number;
  freezingRuins: boolean;
  storageLeastTenthsC?: number;
  storageMostTenthsC?: number;
  colourShows: boolean;
  /** The resin system by name, made where it is new; with the part of it that this product is. */
  system?: { name: string; part: 'A' | 'B' };
  hazards: string[];
  safetySheet: string;
  note: string;
};

/** The resin system of that name, however its letters are written, made where there is none. */
async function systemNamed(tx: WriteTransaction, name: string): Promise<number> {
  const all = await tx.resinSystem.findMany({ orderBy: { id: 'asc' }, select: { id: true, name: true } });
  const plain = (text: string) => text.toLowerCase().replaceAll(/\s+/g, ' ');
  const there = all.find((one) => one.name === name) ?? all.find((one) => plain(one.name) === plain(name));
  return there ? there.id : (await tx.resinSystem.create({ data: { name }, select: { id: true } })).id;
}

/** The row of a product, its resin system found or made. */
export async function productRow(tx: WriteTransaction, fields: ProductFields): Promise<Result<ProductRow, Refusal>> {
  const least = fields.storageLeastTenthsC;
  const most = fields.storageMostTenthsC;
  if (least !== undefined && most !== undefined && least > most) {
    return err({ code: 'outside-range', field: 'storageMostTenthsC' });
  }
  let systemId: number | null = null;
  if (fields.system) {
    const name = fields.system.name.trim();
    systemId = await systemNamed(tx, name);
  }
  return ok({
    name: fields.name.trim(),
    maker: fields.maker.trim(),
    kind: fields.kind,
    unit: fields.unit,
    densityGramsPerLitre: fields.densityGramsPerLitre ?? null,
    packageSize: BigInt(fields.packageSize),
    tareMg: fields.tareMg === undefined ? null : BigInt(fields.tareMg),
    policyKind: fields.policyKind,
    statedLifeCount: fields.statedLife?.count ?? null,
    statedLifeUnit: fields.statedLife?.unit ?? null,
    statedLifeBasis: fields.statedLifeBasis,
    openedLifeCount: fields.openedLife?.count ?? null,
    openedLifeUnit: fields.openedLife?.unit ?? null,
    openedLifeBasis: fields.openedLifeBasis,
    careWindowDays: fields.careWindowDays,
    freezingRuins: fields.freezingRuins,
    storageLeastTenthsC: least ?? null,
    storageMostTenthsC: most ?? null,
    colourShows: fields.colourShows,
    systemId,
    part: fields.system?.part ?? null,
    hazards: fields.hazards.join(','),
    safetySheet: fields.safetySheet.trim(),
    note: fields.note.trim(),
  });
}

export type ProductRow = {
  name: string;
  maker: string;
  kind: string;
  unit: string;
  densityGramsPerLitre: number | null;
  packageSize: bigint;
  tareMg: bigint | null;
  policyKind: string;
  statedLifeCount: number | null;
  statedLifeUnit: string | null;
  statedLifeBasis: string;
  openedLifeCount: number | null;
  openedLifeUnit: string | null;
  openedLifeBasis: string;
  careWindowDays: number;
  freezingRuins: boolean;
  storageLeastTenthsC: number | null;
  storageMostTenthsC: number | null;
  colourShows: boolean;
  systemId: number | null;
  part: string | null;
  hazards: string;
  safetySheet: string;
  note: string;
};
