import type { Refusal } from '@/app/_server/refusal';

export const PART_KINDS = ['top', 'base', 'other'] as const;
export const PART_SHAPES = ['rectangle', 'round', 'oval', 'superellipse'] as const;
export type PartKind = (typeof PART_KINDS)[number];
export type PartShape = (typeof PART_SHAPES)[number] | '';

/** A part of a job as a form gives it. Lengths in nanometres; a shape only where it is a top. */
export type PartFields = {
  kind: PartKind;
  name: string;
  count: number;
  shape: PartShape;
  lengthNm: number | null;
  widthNm: number | null;
  thicknessNm: number | null;
  note: string;
};

const LONGEST_NM = 15_000_000_000;
const MOST = 999;

/** Why a part cannot be kept so: no name, an absurd count, a length that cannot be. */
export function refusePart(fields: PartFields): Refusal | undefined {
  if (fields.name.trim() === '') return { code: 'part-needs-name', field: 'name' };
  if (!Number.isInteger(fields.count) || fields.count < 1 || fields.count > MOST)
    return { code: 'outside-range', field: 'count' };
  for (const field of ['lengthNm', 'widthNm', 'thicknessNm'] as const) {
    const length = fields[field];
    if (length !== null && !(Number.isSafeInteger(length) && length > 0 && length <= LONGEST_NM))
      return { code: 'outside-range', field };
  }
  return undefined;
}

/** The fields as the book keeps them: a round has one length, and what is no top has no shape. */
export function partRow(fields: PartFields) {
  const nm = (length: number | null) => (length === null ? null : BigInt(length));
  const shape = fields.kind === 'top' ? fields.shape : '';
  return {
    kind: fields.kind,
    name: fields.name.trim(),
    count: fields.count,
    shape,
    lengthNm: nm(fields.lengthNm),
    widthNm: nm(shape === 'round' ? fields.lengthNm : fields.widthNm),
    thicknessNm: nm(fields.thicknessNm),
    note: fields.note.trim(),
  };
}
