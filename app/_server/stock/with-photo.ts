import fs from 'node:fs/promises';
import path from 'node:path';
import type { Written } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import type { KeptPhoto } from '@/app/_server/stock/keep-photo';
import { receivePhoto } from '@/app/_server/stock/receive-photo';
import { bookFiles } from '@/prisma/book-files';
import type { Result } from '@/shared/result/result';

/**
 * Checks and keeps an uploaded picture, then writes what it belongs to. Where nothing new is written (refused, failed,
 * or the answer of an earlier press), the file goes again: no picture lies on the disk that the book does not know. `receive` keeps it otherwise than whole.
 */
export async function withPhoto<A>(
  upload: Blob | undefined,
  caption: string,
  write: (photo: KeptPhoto | undefined) => Promise<Result<Written<A>, Refusal>>,
  receive = receivePhoto,
): Promise<Result<Written<A>, Refusal>> {
  if (!upload) return write(undefined);
  const kept = await receive(Buffer.from(await upload.arrayBuffer()), caption);
  if (!kept.ok) return kept;
  const forget = () => fs.rm(path.join(bookFiles().photos, kept.value.file), { force: true });
  const written = await write(kept.value).catch(async (error: unknown) => {
    await forget();
    throw error;
  });
  if (!written.ok || written.value.replayed) await forget();
  return written;
}
