/** A one-page PDF of a made-up data sheet, line by line, as ISO 32000-1 has it: objects, their table, the trailer. */
export function drawDataSheet(lines: readonly string[]): Buffer {
  const text = lines
    .map((line, nr) => `${nr === 0 ? '/F1 20 Tf' : '/F1 12 Tf'} (${line.replaceAll(/[()\\]/g, '\\$&')}) Tj 0 -24 Td`)
    .join('\n');
  const drawing = `BT\n60 760 Td\n${text}\nET`;
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
    '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 4 0 R /Resources << /Font << /F1 5 0 R >> >> >>',
    `<< /Length ${drawing.length} >>\nstream\n${drawing}\nendstream`,
    '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>',
  ];
  let body = '%PDF-1.4\n';
  const at = objects.map((object, nr) => {
    const begins = body.length;
    body += `${nr + 1} 0 obj\n${object}\nendobj\n`;
    return String(begins).padStart(10, '0');
  });
  const table = `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${at.map((begins) => `${begins} 00000 n \n`).join('')}`;
  const end = `trailer\n<< /Size ${objects.length + 1} /Root 1 0 R >>\nstartxref\n${body.length}\n%%EOF\n`;
  return Buffer.from(body + table + end, 'latin1');
}
