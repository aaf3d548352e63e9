/** How a code reached us: seen by the camera, sent by a scanner that types, written by hand, or found in a photo. */
export type ScanSource = 'camera' | 'wedge' | 'typed' | 'photo';

/**
 * One code read. `text` is the raw content with GS1 group separators kept as character 29; `symbology` is the AIM
 * identifier (ISO/IEC 15424), such as `]d2` for a GS1 Data Matrix, where the reader told it.
 */
export interface Scan {
  readonly text: string;
  readonly symbology?: string;
  readonly source: ScanSource;
}

/** A decoder's reading as a scan; the identifier only where the decoder told one. */
export function scanOf(code: { text: string; symbology: string }, source: ScanSource): Scan {
  return code.symbology === '' ? { text: code.text, source } : { text: code.text, symbology: code.symbology, source };
}

export type ScanHandler = (scan: Scan) => void;
