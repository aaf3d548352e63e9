import { describe, expect, it } from 'vitest';
import { readScan } from '@/shared/scan-codes/read-scan';
import { TODAY } from '@/tests/support/scan-codes/today';

const read = (text: string) => readScan({ text }, { today: TODAY });

function elementsOf(text: string): (readonly [string, string])[] {
  const reading = read(text);
  if (reading.kind !== 'gs1') throw new Error(`${text} read as ${JSON.stringify(reading)}`);
  return reading.elements.map(({ ai, value }) => [ai, value] as const);
}

const GS = '\u001d';

// Source of every row: GS1 Barcode Syntax Engine, commit 50657db, unit tests of the file and function named. The places
// of the faults, which the engine does not report this way, are counted by hand.
describe('GS1 Barcode Syntax Engine', () => {
  describe('ai.c test_ai_parseAIdata: bracketed', () => {
    it.each([
      ['(01)12345678901231', [['01', '12345678901231']]],
      [
        '(01)12345678901231(10)12345',
        [
          ['01', '12345678901231'],
          ['10', '12345'],
        ],
      ],
      [
        '(10)12345(11)991225',
        [
          ['10', '12345'],
          ['11', '991225'],
        ],
      ],
      [
        '(3100)123456(10)12345',
        [
          ['3100', '123456'],
          ['10', '12345'],
        ],
      ],
      ['(10)12345\\(11)991225', [['10', '12345(11)991225']]],
    ])('%s', (text, expected) => {
      expect(elementsOf(text)).toEqual(expected);
    });

    it.each([
      ['(17)9(90)217', 'too-short', 5],
      ['(10)12345(11)', 'empty-value', 13],
      ['(12345)12345', 'unknown-ai', 1],
    ])('%s is refused: %s', (text, code, at) => {
      expect(read(text)).toMatchObject({ kind: 'unknown', malformed: { looksLike: 'gs1', code, at } });
    });
  });

  describe('ai.c test_ai_processAIdata: FNC1 written ^', () => {
    it.each([
      ['^0112345678901231', [['01', '12345678901231']]],
      [
        '^01123456789012311012345',
        [
          ['01', '12345678901231'],
          ['10', '12345'],
        ],
      ],
      [
        '^0112345678901231^991234',
        [
          ['01', '12345678901231'],
          ['99', '1234'],
        ],
      ],
      [
        '^1012345^11991225',
        [
          ['10', '12345'],
          ['11', '991225'],
        ],
      ],
    ])('%s', (text, expected) => {
      expect(elementsOf(text)).toEqual(expected);
    });

    it.each([
      ['^01123456789012312', 'unknown-ai', 17],
      ['^0112345678901234', 'check-digit', 16],
      ['^011234567890123', 'too-short', 16],
    ])('%s is refused: %s', (text, code, at) => {
      expect(read(text)).toMatchObject({ kind: 'unknown', malformed: { looksLike: 'gs1', code, at } });
    });
  });

  describe('scandata.c test_scandata_processScanData and test_scandata_generateScanData', () => {
    const three = [
      ['01', '12312312312333'],
      ['10', 'ABC123'],
      ['99', 'TESTING'],
    ];
    it.each([
      [`]C1011231231231233310ABC123${GS}99TESTING`, three],
      [`]d2011231231231233310ABC123${GS}99TESTING`, three],
      [`]Q3011231231231233310ABC123${GS}99TESTING`, three],
      [
        `]e0011231231231233310ABC123${GS}1199122598TESTING${GS}97XYZ`,
        [
          ['01', '12312312312333'],
          ['10', 'ABC123'],
          ['11', '991225'],
          ['98', 'TESTING'],
          ['97', 'XYZ'],
        ],
      ],
      [
        `]e0011231231231233310ABC123${GS}99TESTING${GS}98COMPOSITE${GS}97XYZ`,
        [...three, ['98', 'COMPOSITE'], ['97', 'XYZ']],
      ],
    ])('%j', (text, expected) => {
      expect(elementsOf(text)).toEqual(expected);
    });

    it('an EAN-13 is a GTIN-13 stored by fourteen digits', () => {
      expect(read(']E02112345678900')).toEqual({ kind: 'gtin', form: 'GTIN-13', gtin14: '02112345678900' });
    });

    it('an EAN-13 with a wrong check digit is refused', () => {
      expect(read(']E02112345678901')).toMatchObject({
        kind: 'unknown',
        malformed: { looksLike: 'gtin', code: 'check-digit', at: 15, params: { expected: '0', found: '1' } },
      });
    });

    it('a GS1 symbol without data is refused', () => {
      expect(read(']C1')).toMatchObject({ kind: 'unknown', malformed: { looksLike: 'gs1', code: 'empty-message' } });
    });
  });

  describe('dl.c test_dl_parseDLuri: accepted', () => {
    const sscc = [['00', '006141411234567890']];
    const gtin = [['01', '12312312312333']];
    const spec = [['01', '09520123456788']];
    const query = [...gtin, ['99', 'ABC'], ['98', 'XYZ']];
    it.each([
      ['http://a/00/006141411234567890', sscc],
      ['HTTP://a/00/006141411234567890', sscc],
      ['https://a/00/006141411234567890', sscc],
      ['HTTPS://a/00/006141411234567890', sscc],
      ['https://a/01/12312312312333', gtin],
      ['https://xn--fsq.xn--0zwm56d/01/12312312312333', gtin],
      ['https://a./01/12312312312333', gtin],
      ['https://a:65535/01/12312312312333', gtin],
      ['https://192.0.2.1/01/12312312312333', gtin],
      ['https://3232235777/01/12312312312333', gtin],
      ['https://[2001:db8::1]/01/12312312312333', gtin],
      ['https://a/stem/00/006141411234567890', sscc],
      ['https://a/more/stem/00/006141411234567890', sscc],
      ['https://a/00/faux/00/006141411234567890', sscc],
      ['https://a/01/12312312312333/22/TEST/10/ABC/21/XYZ', [...gtin, ['22', 'TEST'], ['10', 'ABC'], ['21', 'XYZ']]],
      ['https://a/01/12312312312333/235/TEST', [...gtin, ['235', 'TEST']]],
      ['https://a/253/1231231231232', [['253', '1231231231232']]],
      ['https://a/253/1231231231232TEST5678901234567', [['253', '1231231231232TEST5678901234567']]],
      [
        'https://a/8018/123456789012345675/8019/123',
        [
          ['8018', '123456789012345675'],
          ['8019', '123'],
        ],
      ],
      ['https://a/stem/00/006141411234567890?', sscc],
      ['https://a/stem/00/006141411234567890?99=ABC', [...sscc, ['99', 'ABC']]],
      [
        'https://a/stem/401/12345678?99=ABC',
        [
          ['401', '12345678'],
          ['99', 'ABC'],
        ],
      ],
      ['https://a/01/12312312312333?99=ABC&98=XYZ', query],
      ['https://a/01/12312312312333?&&&99=ABC&&&&&&98=XYZ&&&', query],
      ['https://a/01/12312312312333?99=ABC&unknown=666&98=XYZ', query],
      ['https://a/01/12312312312333?singleton1&99=ABC&singleton2&98=XYZ&singleton3', query],
      [
        'https://a/01/12312312312333/22/ABC%2d123?99=ABC&98=XYZ%2f987',
        [...gtin, ['22', 'ABC-123'], ['99', 'ABC'], ['98', 'XYZ/987']],
      ],
      [
        'https://a/01/12312312312333/22/ABC+123?99=ABC&98=XYZ%2f987',
        [...gtin, ['22', 'ABC+123'], ['99', 'ABC'], ['98', 'XYZ/987']],
      ],
      ['https://a/01/12312312312333/22/test/10/abc/21/xyz#', [...gtin, ['22', 'test'], ['10', 'abc'], ['21', 'xyz']]],
      ['https://a/01/12312312312333/22/test#fragment', [...gtin, ['22', 'test']]],
      ['https://a/stem/00/006141411234567890?99=ABC#fragment', [...sscc, ['99', 'ABC']]],
      ['https://id.gs1.org/01/09520123456788', spec],
      ['https://id.gs1.org/01/09520123456788/22/2A', [...spec, ['22', '2A']]],
      ['https://id.gs1.org/01/09520123456788/10/ABC123', [...spec, ['10', 'ABC123']]],
      [
        'https://id.gs1.org/01/09520123456788/10/ABC1/21/12345?17=180426',
        [...spec, ['10', 'ABC1'], ['21', '12345'], ['17', '180426']],
      ],
      [
        'https://example.com/01/09520123456788?3103=000195&3922=0299&17=201225',
        [...spec, ['3103', '000195'], ['3922', '0299'], ['17', '201225']],
      ],
      [
        'https://id.gs1.org/00/952012345678912345?02=09520123456788&37=25&10=ABC123',
        [
          ['00', '952012345678912345'],
          ['02', '09520123456788'],
          ['37', '25'],
          ['10', 'ABC123'],
        ],
      ],
      [
        'https://id.gs1.org/414/9520123456788/254/32a%2Fb',
        [
          ['414', '9520123456788'],
          ['254', '32a/b'],
        ],
      ],
      ['https://id.gs1.org/01/09520123456788/235/XYZ?10=ABC123', [...spec, ['235', 'XYZ'], ['10', 'ABC123']]],
      // dl.c test_dl_generateDLuri, read back.
      ['https://id.gs1.org/01/12312312312326/21/abc123', elementsOf('(01)12312312312326(21)abc123')],
      [
        'https://example.com/01/12312312312333/10/ABC%2B123?99=XYZ%2BQWERTY',
        elementsOf('(01)12312312312333(10)ABC+123(99)XYZ+QWERTY'),
      ],
    ])('%s', (text, expected) => {
      expect(elementsOf(text)).toEqual(expected);
    });
  });

  describe('dl.c test_dl_parseDLuri: a web address, but no Digital Link', () => {
    it.each([
      'http:///',
      'http://a',
      'http://a/',
      'http://a/b',
      'http://a/b/',
      'HtTp://a/b/00/006141411234567890',
      'https://00/006141411234567890',
      'https://[fe80::1%25lo]/01/12312312312333',
      'https://$a/006141411234567890',
      'https://a$/006141411234567890',
      'https://a/gtin/12312312312333',
    ])('%s', (text) => {
      expect(read(text)).toEqual({ kind: 'unknown', code: text });
    });
  });

  describe('dl.c test_dl_parseDLuri, test_dl_testValidateDLpathAIseq, test_dl_URIunescape: refused', () => {
    it.each([
      ['https://a/01/2112345678900', 'too-short', 26],
      ['https://a/01/416000336108', 'too-short', 25],
      ['https://a/01/02345673', 'too-short', 21],
      ['https://a/253/1231231231232TEST56789012345678', 'too-long', 44],
      ['https://a/stem/00/006141411234567890/', 'trailing-slash', 36],
      ['https://a/01/12312312312333?99=', 'empty-value', 31],
      ['https://a/01/12312312312333?99=ABC&999=faux', 'unknown-ai', 35],
      ['https://a/01/12312312312333/22/ABC%2d123?99=ABC&98=XYZ+987', 'invalid-character', 54],
      ['https://example.com/01/09520123456788?10=ABC123', 'belongs-in-path', 38],
      ['https://id.gs1.org/01/09520123456788/10/ABC123?99=XYZ789&99=XYZ789', 'repeated', 57],
      ['https://id.gs1.org/01/09520123456788/10/ABC123?99=XYZ789&01=09520123456788', 'repeated', 57],
      ['https://example.com/01/09520123456788?99=XYZ&89=ABC123', 'unknown-ai', 45],
      ['https://a/01/12312312312333/10/ABC/22/XYZ', 'qualifier-order', 35],
      ['https://a/01/12312312312333/22/A%00B', 'null-character', 32],
      ['https://a/01/12312312312333?8200=A', 'not-an-attribute', 28],
    ])('%s: %s', (text, code, at) => {
      expect(read(text)).toMatchObject({ kind: 'unknown', malformed: { looksLike: 'digital-link', code, at } });
    });
  });
});
