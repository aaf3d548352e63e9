/**
 * Writes into the book of the data folder given, on a file system that is too small for it, until that is full, and says
 * what became of it: photos first, then entries, then what is in the book when it is opened again.
 */
import fs from 'node:fs';
import sharp from 'sharp';
import { setUpBook } from '@/app/_server/book/set-up-book';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { teachProduct } from '@/app/_server/products/teach-product';
import { addPhoto } from '@/app/_server/stock/add-photo';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { receivePhoto } from '@/app/_server/stock/receive-photo';
import { bookFiles } from '@/prisma/book-files';
import { openBook } from '@/prisma/open-book';
import { prepareBook } from '@/prisma/prepare-book';
import { sayStoreTrouble } from '@/prisma/store-trouble';
import { RESIN } from '@/tests/support/stock-of-a-test';
import { by, must, TODAY } from '@/tests/support/test-book';

const files = bookFiles(process.argv[2]);
process.env.FLITCHBOOK_DATA = files.folder;
await prepareBook(files);
let book = await openBook(files);
must(await setUpBook(book, by(), { name: 'Small disk', timeZone: 'Europe/London', units: 'metric', currency: 'GBP' }));
const { productId } = must(await teachProduct(book, by(), RESIN));
const receive = () =>
  receiveContainers(book, by(), { productId, lotCode: 'L1', dates: {}, count: 20, size: 1000, receivedOn: TODAY });
const { lotId } = must(await receive());

let written = 3;
const noise = Buffer.alloc(800 * 800 * 3);
for (let at = 0; at < noise.length; at += 1) noise[at] = (Math.imul(at, 2_654_435_761) >>> 24) ^ (at >> 7);
const picture = await sharp(noise, { raw: { width: 800, height: 800, channels: 3 } })
  .jpeg({ quality: 95 })
  .toBuffer();
const photoTrouble = await untilItFails(async () => {
  const photo = await receivePhoto(picture, 'Noise');
  if (!photo.ok) throw new Error(photo.error.code);
  must(await addPhoto(book, by(), { stockId: lotId, photo: photo.value }));
});
const halfPhotos = fs.readdirSync(files.photos).filter((name) => name.endsWith('.part'));
const filesKept = fs.readdirSync(files.photos).length;

const entryTrouble = await untilItFails(async () => {
  must(await receive());
});
await book.close();

book = await openBook(files);
const proof = await proveBook(book.read);
const said = {
  photoTrouble,
  entryTrouble,
  halfPhotos,
  filesKept,
  photos: await book.read.photo.count(),
  written,
  entries: proof.entries,
  differences: proof.differences,
};
await book.close();
process.stdout.write(JSON.stringify(said));
process.exit(0);

async function untilItFails(write: () => Promise<void>): Promise<string> {
  for (let tries = 0; tries < 3000; tries += 1) {
    try {
      await write();
      written += 1;
    } catch (error) {
      return sayStoreTrouble(error);
    }
  }
  return 'The disk never filled.';
}
