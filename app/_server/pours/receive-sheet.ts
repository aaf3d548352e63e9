import { randomUUID } from 'node:crypto';
import fs from 'node:fs/promises';
import path from 'node:path';
import sharp from 'sharp';
import type { Refusal } from '@/app/_server/refusal';
import { OPENED } from '@/app/_server/stock/judge-upload';
import { bookFiles } from '@/prisma/book-files';
import { sayPhotoSize } from '@/shared/photos/photo-limits';
import { MOST_SHEET_BYTES } from '@/shared/photos/sheet-limits';
import { err, ok, type Result } from '@/shared/result/result';

/** A data sheet already checked and written under the book's sheets. */
export type KeptSheet = { file: string; fileName: string; bytes: number };

const LONGEST_NAME = 120;

/**
 * Checks an uploaded data sheet and keeps it as it is, under a name never used before: a PDF, or a picture of the page as
 * PNG or JPEG. What it is, is read from the file itself, whatever its name says.
 */
export async function receiveSheet(upload: Buffer, name: string): Promise<Result<KeptSheet, Refusal>> {
  if (upload.length > MOST_SHEET_BYTES) {
    const facts = { size: sayPhotoSize(upload.length), most: sayPhotoSize(MOST_SHEET_BYTES) };
    return err({ code: 'sheet-too-large', field: 'file', facts });
  }
  const ending = await endingOf(upload);
  if (!ending) return err({ code: 'sheet-not-readable', field: 'file' });
  const file = `${randomUUID().replaceAll('-', '')}.${ending}`;
  const folder = bookFiles().sheets;
  await fs.mkdir(folder, { recursive: true });
  // Written beside and renamed, so a full disk leaves no half sheet under a good name.
  const partial = path.join(folder, `${randomUUID()}.part`);
  try {
    await fs.writeFile(partial, upload, { flush: true });
    await fs.rename(partial, path.join(folder, file));
  } catch (error) {
    await fs.rm(partial, { force: true });
    throw error;
  }
  return ok({ file, fileName: name.trim().slice(-LONGEST_NAME), bytes: upload.length });
}

async function endingOf(upload: Buffer): Promise<'pdf' | 'png' | 'jpg' | undefined> {
  // ISO 32000-1, 7.5.2: the header line; 7.5.5: the end-of-file marker in the last 1024 bytes, as readers take it.
  if (upload.subarray(0, 5).toString('latin1') === '%PDF-') {
    return upload.subarray(-1024).toString('latin1').includes('%%EOF') ? 'pdf' : undefined;
  }
  const head = await sharp(upload, OPENED)
    .metadata()
    .catch(() => undefined);
  return head?.format === 'png' ? 'png' : head?.format === 'jpeg' ? 'jpg' : undefined;
}
