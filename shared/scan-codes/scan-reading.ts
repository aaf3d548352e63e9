import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { Gs1Fault } from '@/shared/scan-codes/gs1-element';
import type { Gs1Message } from '@/shared/scan-codes/gs1-message';
import type { OwnLabelCode, OwnLabelKind } from '@/shared/scan-codes/own-label';
import type { OwnLabelError } from '@/shared/scan-codes/parse-own-label';
import type { GtinError, GtinForm } from '@/shared/scan-codes/to-gtin14';

/** What a camera, a wedge scanner or a keyboard gave. */
export type ScanInput = {
  readonly text: string;
  /** AIM symbology identifier such as `]C1`, where the decoder gives it apart from the text. */
  readonly symbology?: string;
};

/** What the reading may lean on. `taught` knows what a code means that this shop has been shown before. */
export type ScanContext<Meaning> = {
  readonly today: CalendarDate;
  readonly taught?: (code: string) => Meaning | undefined;
};

/**
 * What a text nearly was. `at` is an index of the text as given; `params` are the words a sentence needs: `ai`,
 * `title`, `found`, `expected`, `length`, `limit`, whichever apply.
 */
export type Malformed = {
  readonly looksLike: 'gs1' | 'digital-link' | 'gtin' | 'own' | 'nothing';
  readonly code: Gs1Fault['code'] | GtinError['code'] | OwnLabelError['code'] | 'too-long';
  readonly at: number;
  readonly params: Readonly<Record<string, string>>;
};

export type Gs1Reading = Gs1Message & {
  readonly kind: 'gs1';
  readonly via: 'element-string' | 'bracketed' | 'digital-link';
};

type GtinReading = { readonly kind: 'gtin'; readonly form: GtinForm; readonly gtin14: string };

type OwnReading = { readonly kind: 'own'; readonly label: OwnLabelKind; readonly code: OwnLabelCode };

type TaughtReading<Meaning> = { readonly kind: 'taught'; readonly code: string; readonly meaning: Meaning };

/** Nothing known. `code` is what to teach: trimmed, plain characters, FNC1 written `^`. */
type UnknownReading = { readonly kind: 'unknown'; readonly code: string; readonly malformed?: Malformed };

export type ScanReading<Meaning> = Gs1Reading | GtinReading | OwnReading | TaughtReading<Meaning> | UnknownReading;
