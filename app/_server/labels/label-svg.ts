import type { LabelContent } from '@/shared/labels/label-content';
import type { LabelSize } from '@/shared/labels/label-formats';
import type { Symbology } from '@/shared/labels/label-symbols';
import { layoutLabel } from '@/shared/labels/layout-label';
import { labelTypeface, textRuns } from './label-typeface';
import { symbolBars } from './symbol-bars';

/** Stroke of a line to write on, in millimetres. */
export const RULE_MM = 0.2;

/**
 * One label as an SVG drawing in millimetres. Letters are outlines, so that it looks the same wherever it is opened; the words
 * are repeated in its title for screen readers.
 */
export function labelSvg(content: LabelContent, size: LabelSize, symbology: Symbology): string {
  const layout = layoutLabel(content, size, symbology, labelTypeface);
  const { x, y, module } = layout.symbol;
  const symbol = symbolBars(content.code, symbology)
    .map(
      (bar) =>
        `M${mm(x + bar.x * module)} ${mm(y + bar.y * module)}h${mm(bar.length * module)}v${mm(module)}h${mm(-bar.length * module)}z`,
    )
    .join('');
  const letters = layout.texts.flatMap((text) =>
    textRuns(text.text, text.face).map((run) => {
      const scale = text.size / run.file.font.unitsPerEm;
      return `<path transform="translate(${mm(text.x + run.x * text.size)} ${mm(text.baseline)}) scale(${scale.toFixed(6)} ${(-scale).toFixed(6)})" d="${outline(run.text, run.file.font)}"/>`;
    }),
  );
  const rules = layout.rules.map(
    (rule) => `<path d="M${mm(rule.x)} ${mm(rule.y)}h${mm(rule.width)}v${RULE_MM}h${mm(-rule.width)}z"/>`,
  );
  const words = escapeXml(layout.texts.map((text) => text.text).join(', '));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size.width}mm" height="${size.height}mm" viewBox="0 0 ${size.width} ${size.height}" role="img">`,
    `<title>${words}</title>`,
    `<rect width="${size.width}" height="${size.height}" fill="#fff"/>`,
    `<path d="${symbol}"/>`,
    ...letters,
    ...rules,
    '</svg>',
  ].join('');
}

function outline(text: string, font: ReturnType<typeof textRuns>[number]['file']['font']): string {
  const run = font.layout(text);
  let x = 0;
  return run.glyphs
    .map((glyph, index) => {
      const position = run.positions[index];
      const path = glyph.path.translate(x + (position?.xOffset ?? 0), position?.yOffset ?? 0).toSVG();
      x += position?.xAdvance ?? glyph.advanceWidth;
      return path;
    })
    .join('');
}

function mm(value: number): string {
  return String(Math.round(value * 10000) / 10000);
}

function escapeXml(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
}
