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

export type ScanHandler = (scan: Scan) => void;
