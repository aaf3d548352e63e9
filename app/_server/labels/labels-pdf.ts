import PDFDocument from 'pdfkit';
import type { LabelContent } from '@/shared/labels/label-content';
import type { LabelFormat } from '@/shared/labels/label-formats';
import type { Symbology } from '@/shared/labels/label-symbols';
import { layoutLabel } from '@/shared/labels/layout-label';
import { placeLabels } from '@/shared/labels/place-labels';
import { RULE_MM } from './label-svg';
import { fontFiles, labelTypeface, textRuns } from './label-typeface';
import { symbolBars } from './symbol-bars';

const POINTS_PER_MM = 72 / 25.4;

export type LabelsPdfOptions = {
  readonly symbology: Symbology;
  /** First position to print on a part-used sheet, from 1 along the rows. */
  readonly start: number;
};

/**
 * The labels as a PDF in true size: a sheet of labels a page, or one label a page for a label printer. The fonts are embedded,
 * and the file asks the viewer to print it without scaling.
 */
export function labelsPdf(
  labels: readonly LabelContent[],
  format: LabelFormat,
  options: LabelsPdfOptions,
): Promise<Buffer> {
  const paper = format.kind === 'sheet' ? format.page : format.label;
  const document = new PDFDocument({
    autoFirstPage: false,
    font: '',
    size: [paper.width * POINTS_PER_MM, paper.height * POINTS_PER_MM],
    margin: 0,
    info: { Title: `Labels ${[...new Set(labels.map((label) => label.code))].join(' ')}`, Creator: 'Flitchbook' },
  });
  const written = collect(document);
  printInTrueSize(document);
  for (const file of (['text', 'strong', 'mono'] as const).flatMap(fontFiles))
    document.registerFont(file.name, file.data);
  for (const page of placeLabels(labels.length, format, options.start)) {
    document.addPage();
    document.scale(POINTS_PER_MM);
    for (const position of page) {
      const label = labels[position.index];
      if (label) drawLabel(document, label, format, options.symbology, position);
    }
  }
  document.end();
  return written;
}

/** Scaled to fit, the default of many print dialogs, a sheet drifts off its labels. The library has no public option for it. */
function printInTrueSize(document: PDFKit.PDFDocument): void {
  const root: { data: Record<string, unknown> } = Reflect.get(document, '_root');
  root.data.ViewerPreferences = document.ref({ PrintScaling: 'None' });
}

function drawLabel(
  document: PDFKit.PDFDocument,
  label: LabelContent,
  format: LabelFormat,
  symbology: Symbology,
  at: { readonly x: number; readonly y: number },
): void {
  const layout = layoutLabel(label, format.label, symbology, labelTypeface);
  document.save().translate(at.x, at.y);
  const { x, y, module } = layout.symbol;
  // One path for all modules: filled apart, neighbours show a hairline between them in some viewers.
  for (const bar of symbolBars(label.code, symbology)) {
    document.rect(x + bar.x * module, y + bar.y * module, bar.length * module, module);
  }
  document.fill('black');
  for (const text of layout.texts) {
    for (const run of textRuns(text.text, text.face)) {
      document
        .font(run.file.name)
        .fontSize(text.size)
        .text(run.text, text.x + run.x * text.size, text.baseline, { lineBreak: false, baseline: 'alphabetic' });
    }
  }
  for (const rule of layout.rules) document.rect(rule.x, rule.y, rule.width, RULE_MM).fill('black');
  document.restore();
}

function collect(document: PDFKit.PDFDocument): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const parts: Buffer[] = [];
    document.on('data', (part: Buffer) => parts.push(part));
    document.on('end', () => resolve(Buffer.concat(parts)));
    document.on('error', reject);
  });
}
