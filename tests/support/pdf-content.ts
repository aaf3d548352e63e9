import { inflateSync } from 'node:zlib';
import type { Grey } from './read-symbol';

export type PdfPage = { readonly width: number; readonly height: number; readonly content: string };
export type FilledRectangle = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

/** The pages of a PDF whose streams are deflated: size in points and drawing operators. */
export function pdfPages(pdf: Buffer): PdfPage[] {
  const text = pdf.toString('latin1');
  return [...text.matchAll(/\/Type \/Page\n[\s\S]*?endobj/g)].map(([page]) => {
    const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page);
    const contents = /\/Contents (\d+) 0 R/.exec(page);
    if (!box || !contents) throw new Error('A page without size or contents');
    const start = text.indexOf(`\n${contents[1]} 0 obj`);
    const from = text.indexOf('stream\n', start) + 'stream\n'.length;
    const length = Number(/\/Length (\d+)/.exec(text.slice(start, from))?.[1]);
    const content = inflateSync(pdf.subarray(from, from + length)).toString('latin1');
    return { width: Number(box[1]), height: Number(box[2]), content };
  });
}

/**
 * The upright rectangles a page fills, in points from its top left corner, by running the few operators that matter:
 * `q Q` save and restore, `cm` transform, `re` rectangle (ISO 32000-1:2008, tables 57 and 59).
 */
export function filledRectangles(page: PdfPage): FilledRectangle[] {
  const rectangles: FilledRectangle[] = [];
  const saved: number[][] = [];
  let matrix = [1, 0, 0, 1, 0, 0];
  for (const line of page.content.split('\n')) {
    const words = line.trim().split(/\s+/);
    const operator = words.at(-1);
    const numbers = words.slice(0, -1).map(Number);
    if (operator === 'q') saved.push(matrix);
    else if (operator === 'Q') matrix = saved.pop() ?? [1, 0, 0, 1, 0, 0];
    else if (operator === 'cm') matrix = multiply(numbers, matrix);
    else if (operator === 're') {
      const [x = 0, y = 0, width = 0, height = 0] = numbers;
      const [left, top] = apply(matrix, x, y);
      const [right, bottom] = apply(matrix, x + width, y + height);
      rectangles.push({
        x: Math.min(left, right),
        y: page.height - Math.max(top, bottom),
        width: Math.abs(right - left),
        height: Math.abs(bottom - top),
      });
    }
  }
  return rectangles;
}

/** The filled rectangles of a page as a picture, `dots` a millimetre. */
export function picturePage(page: PdfPage, dots: number): Grey {
  const scale = (dots * 25.4) / 72;
  const width = Math.round(page.width * scale);
  const height = Math.round(page.height * scale);
  const data = new Uint8Array(width * height).fill(255);
  for (const box of filledRectangles(page)) {
    for (let y = Math.round(box.y * scale); y < Math.round((box.y + box.height) * scale); y += 1) {
      data.fill(0, y * width + Math.round(box.x * scale), y * width + Math.round((box.x + box.width) * scale));
    }
  }
  return { data, width, height };
}

function multiply(first: readonly number[], second: readonly number[]): number[] {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = first;
  const [p = 0, q = 0, r = 0, s = 0, t = 0, u = 0] = second;
  return [a * p + b * r, a * q + b * s, c * p + d * r, c * q + d * s, e * p + f * r + t, e * q + f * s + u];
}

function apply(matrix: readonly number[], x: number, y: number): [number, number] {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = matrix;
  return [a * x + c * y + e, b * x + d * y + f];
}
