import { describe, expect, it } from 'vitest';
import { aimSymbology } from '@/shared/scan-codes/aim-symbology';
import { readScan } from '@/shared/scan-codes/read-scan';
import { TODAY } from '@/tests/support/scan-codes/today';

describe('AIM symbology identifiers', () => {
  // ISO/IEC 15424 as listed in symIdTable of the GS1 Barcode Syntax Engine 50657db (scandata.c).
  it.each([
    [']C1', 'GS1-128', 'gs1'],
    [']E0', 'EAN-13, UPC-A or UPC-E', 'gtin-13'],
    [']E4', 'EAN-8', 'gtin-8'],
    [']e0', 'GS1 DataBar or Composite', 'gs1'],
    [']d1', 'Data Matrix', 'plain'],
    [']d2', 'GS1 DataMatrix', 'gs1'],
    [']Q1', 'QR Code', 'plain'],
    [']Q3', 'GS1 QR Code', 'gs1'],
    // GS1 General Specifications, table of symbology identifiers.
    [']I1', 'ITF-14', 'gtin-14'],
    [']J1', 'GS1 DotCode', 'gs1'],
    [']C0', 'Code 128', 'plain'],
    // ISO/IEC 15424 code letters, from memory.
    [']A0', 'Code 39', 'plain'],
    [']G0', 'Code 93', 'plain'],
    [']L0', 'PDF417', 'plain'],
    [']U1', 'MaxiCode', 'plain'],
    [']z0', 'Aztec Code', 'plain'],
  ])('%s is %s, read as %s', (id, name, payload) => {
    expect(aimSymbology(id)).toEqual({ id, name, payload });
  });

  it.each(['C1', ']', ']C', ']C10', ']?1', ']b0', ''])('%j is no identifier', (id) => {
    expect(aimSymbology(id)).toBeUndefined();
  });

  it('the same data is GS1 behind ]C1 and plain behind ]C0', () => {
    const text = '0109520123456788' + '10ABC123';
    expect(readScan({ text, symbology: ']C1' }, { today: TODAY }).kind).toBe('gs1');
    expect(readScan({ text, symbology: ']C0' }, { today: TODAY })).toEqual({ kind: 'unknown', code: text });
    expect(readScan({ text: `]C0${text}` }, { today: TODAY })).toEqual({ kind: 'unknown', code: text });
  });

  it.each([
    [']E04006381333931', 'GTIN-13', '04006381333931'],
    [']E0036000291452', 'GTIN-12', '00036000291452'],
    [']E402345673', 'GTIN-8', '00000002345673'],
    [']I124012345678905', 'GTIN-14', '24012345678905'],
    [']E3400638133393112', 'GTIN-13', '04006381333931'],
    [']E3400638133393150599', 'GTIN-13', '04006381333931'],
  ])('%s is a %s', (text, form, gtin14) => {
    expect(readScan({ text }, { today: TODAY })).toEqual({ kind: 'gtin', form, gtin14 });
  });
});
