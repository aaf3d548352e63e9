import type { ProductFields } from '@/app/_server/products/product-fields';
import { sizeText } from '@/app/(shop)/arrive/size-text';
import type { TypedProduct } from '@/app/(shop)/arrive/teach-schema';
import type { Life } from '@/shared/calendar/life';
import { isGhsCode } from '@/shared/hazards/ghs-pictograms';
import type { Basis } from '@/shared/shelf-life/types/policy';
import { parseTemperature } from '@/shared/units/parse-temperature';
import { printTemperature } from '@/shared/units/print-temperature';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A product of the book as its form would have been typed; read back by the form's schema it is the same product. */
export function typedProduct(fields: ProductFields, prefer: UnitSystem): TypedProduct {
  const life = (given: Life | undefined, basis: Basis) => ({
    count: given ? String(given.count) : '',
    unit: given?.unit ?? 'month',
    basis,
  });
  const degrees = (tenths: number | undefined) => (tenths === undefined ? '' : degreesText(tenths, prefer));
  return {
    name: fields.name,
    maker: fields.maker,
    kind: fields.kind,
    size: sizeText(fields.packageSize, fields.unit, prefer),
    policyKind: fields.policyKind,
    statedLife: life(fields.statedLife, fields.statedLifeBasis),
    openedLife: life(fields.openedLife, fields.openedLifeBasis),
    careWindow: String(fields.careWindowDays),
    freezingRuins: fields.freezingRuins,
    storageLeast: degrees(fields.storageLeastTenthsC),
    storageMost: degrees(fields.storageMostTenthsC),
    colourShows: fields.colourShows,
    systemName: fields.system?.name ?? '',
    hazards: fields.hazards.filter(isGhsCode),
    safetySheet: fields.safetySheet,
    tare: fields.tareMg === undefined ? '' : sizeText(fields.tareMg, 'mg', prefer),
    density: fields.densityGramsPerLitre === undefined ? '' : String(fields.densityGramsPerLitre),
    note: fields.note,
  };
}

/** The way the shop likes to read it where that reads back to the very same tenth, else in Celsius. */
function degreesText(tenths: number, prefer: UnitSystem): string {
  const short = printTemperature(tenthsCelsius(tenths), { prefer });
  const back = parseTemperature(short, { prefer });
  return back.ok && back.value === tenths ? short : printTemperature(tenthsCelsius(tenths), { prefer: 'metric' });
}
