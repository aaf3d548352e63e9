import type { ProductFields } from '@/app/_server/products/product-fields';
import { teachProduct } from '@/app/_server/products/teach-product';
import { type ReceiveContainers, receiveContainers } from '@/app/_server/stock/receive-containers';
import type { ReceivePieces } from '@/app/_server/stock/receive-pieces';
import type { OpenBook } from '@/prisma/open-book';
import { by, must, TODAY } from '@/tests/support/test-book';

/** A deep-pour resin, 2.5 kg a jug: 12 months sealed, 6 opened, both from its data sheet. */
export const RESIN: ProductFields = {
  name: 'Deep-pour resin, part A',
  maker: 'Tarn',
  kind: 'resin-a',
  unit: 'mg',
  densityGramsPerLitre: 1100,
  packageSize: 2_500_000,
  tareMg: 180_000,
  policyKind: 'inspectable',
  statedLife: { count: 12, unit: 'month' },
  statedLifeBasis: 'data-sheet',
  openedLife: { count: 6, unit: 'month' },
  openedLifeBasis: 'data-sheet',
  careWindowDays: 14,
  freezingRuins: false,
  colourShows: true,
  system: { name: 'Tarn deep pour', part: 'A' },
  hazards: ['GHS07'],
  safetySheet: '',
  note: '',
};

/** Teaches a product and puts containers of one lot into the book. */
export async function stocked(
  book: OpenBook,
  {
    product = {},
    ...receive
  }: Partial<Omit<ReceiveContainers, 'productId'>> & { product?: Partial<ProductFields> } = {},
) {
  const { productId } = must(await teachProduct(book, by(), { ...RESIN, ...product }));
  const received = must(
    await receiveContainers(book, by(), {
      productId,
      lotCode: 'K26-114',
      dates: { bestBefore: { date: '2027-01-10' as typeof TODAY, precision: 'day', confirmed: true } },
      count: 1,
      size: 2_500_000,
      receivedOn: TODAY,
      ...receive,
    }),
  );
  return { productId, ...received, labels: received.containers.map((each) => each.label) };
}

const MM = 1_000_000;

/** A walnut slab, 3 m by about 70 cm by 58 mm, read at 9.6 %. */
export const aSlab = (more: Partial<ReceivePieces> = {}): ReceivePieces => ({
  form: 'slab',
  species: 'Walnut',
  count: 1,
  lengthNm: 3000 * MM,
  widthStartNm: 700 * MM,
  widthMiddleNm: 650 * MM,
  widthEndNm: 720 * MM,
  thicknessNm: 58 * MM,
  flags: ['live-edge-left'],
  flitch: '',
  receivedOn: TODAY,
  note: '',
  reading: { mcTenths: 96, meter: 'pins', spot: 'middle' },
  ...more,
});
