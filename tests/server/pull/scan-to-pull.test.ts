import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { teachCode } from '@/app/_server/codes/teach-code';
import { addJob } from '@/app/_server/jobs/add-job';
import { addPlace } from '@/app/_server/places/add-place';
import { type PullReply, scanToPull } from '@/app/_server/pull/scan-to-pull';
import { discard } from '@/app/_server/stock/discard';
import { receiveContainers } from '@/app/_server/stock/receive-containers';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { unwrap } from '@/shared/result/result';
import { mintOwnLabel } from '@/shared/scan-codes/mint-own-label';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const GTIN = '05012345678900';
const ASK = { purpose: 'client' as const, dayOfUse: day('2027-01-05') };
const NEVER_GIVEN = 9_999;
const dated = (date: string) => ({ bestBefore: { date: day(date), precision: 'day' as const, confirmed: true } });

describe('a scan at the bench', () => {
  let test: TestBook;
  let first = '';
  let productId = 0;
  beforeAll(async () => {
    test = await freshBook();
    const stock = await stocked(test.book, { lotCode: 'LATE', dates: dated('2027-01-01') });
    first = stock.labels[0] ?? '';
    productId = stock.productId;
    must(await teachCode(test.book, by(), { code: GTIN, means: { productId } }));
  });
  afterAll(() => test.remove());

  const put = async (lotCode: string, bestBefore: string) => {
    const input = { productId, lotCode, dates: dated(bestBefore), count: 1, size: 2_500_000, receivedOn: TODAY };
    return must(await receiveContainers(test.book, by(), input)).containers[0]?.label ?? '';
  };
  const reply = async (text: string, ask: Partial<Parameters<typeof scanToPull>[1]> = {}): Promise<PullReply> =>
    unwrap(await scanToPull(test.book, { ...ASK, ...ask, scan: { text } }, NOW));

  it('answers an own label, typed in any case, with the verdict on the day', async () => {
    const answer = await reply(` ${first.charAt(0).toLowerCase()}-${first.slice(1).toLowerCase()} `);
    expect(answer.kind === 'container' && answer.verdict.word).toBe('stop');
  });

  it('answers a code that was taught for one container as its own label', async () => {
    must(await teachCode(test.book, by(), { code: 'SHELF-7', means: { stockLabel: first } }));
    const answer = await reply('SHELF-7');
    expect(answer.kind === 'container' && answer.line.label).toBe(first);
  });

  it('lists the containers of a product by its bar code: use before care before stop, first to expire first', async () => {
    const later = await put('C', '2027-09-01');
    const near = await put('NEAR', '2027-01-10');
    const sooner = await put('B', '2027-06-01');
    const answer = await reply('5012345678900');
    if (answer.kind !== 'choose') throw new Error(answer.kind);
    expect(answer.options.map(({ line, verdict }) => [line.label, verdict.word])).toEqual([
      [sooner, 'use'],
      [later, 'use'],
      [near, 'care'],
      [first, 'stop'],
    ]);
  });

  it('keeps to the lot a label names when the book has some of it, and shows all when it has none', async () => {
    const known = await reply(`]C101${GTIN}10NEAR`);
    const unknown = await reply(`]C101${GTIN}10ELSEWHERE`);
    expect(known.kind === 'choose' && [known.lot, known.options.length]).toEqual(['NEAR', 1]);
    expect(unknown.kind === 'choose' && [unknown.lot, unknown.options.length]).toEqual([null, 4]);
  });

  it('takes the purpose from the job, so that nobody can judge a client’s piece as their own', async () => {
    const job = { name: 'Bench', purpose: 'own' as const, client: '', dayOfUse: ASK.dayOfUse, note: '' };
    const { jobId } = must(await addJob(test.book, by(), job));
    const own = await reply(first, { jobId });
    expect(own.kind === 'container' && [own.purpose, own.verdict.word, own.job?.name]).toEqual([
      'own',
      'care',
      'Bench',
    ]);
    const client = must(await addJob(test.book, by(), { ...job, name: 'Desk', purpose: 'client' }));
    const judged = await reply(first, { jobId: client.jobId, purpose: 'own' });
    expect(judged.kind === 'container' && [judged.purpose, judged.verdict.word]).toEqual(['client', 'stop']);
  });

  it('refuses a job that is not in the book', async () => {
    expect(refusedWith(await scanToPull(test.book, { ...ASK, jobId: 4711, scan: { text: first } }, NOW))).toBe(
      'not-found',
    );
  });

  it('judges a piece of wood for the job', async () => {
    const piece = {
      form: 'slab' as const,
      species: 'Elm',
      count: 1,
      lengthNm: 2_000_000_000,
      widthStartNm: 700_000_000,
      widthMiddleNm: 700_000_000,
      widthEndNm: 700_000_000,
      thicknessNm: 50_000_000,
      flags: [],
      flitch: '',
      receivedOn: TODAY,
      note: '',
    };
    const label = must(await receivePieces(test.book, by(), piece)).pieces[0]?.label ?? '';
    const answer = await reply(label);
    expect(answer.kind === 'piece' && [answer.verdict.word, answer.verdict.reasons[0]?.code]).toEqual([
      'care',
      'no-reading',
    ]);
  });

  it('says what else a scan is, and offers to teach only what can be taught', async () => {
    const place = must(await addPlace(test.book, by(), { name: 'Cabinet 2', kind: 'cabinet' }));
    const stranger = unwrap(mintOwnLabel('container', NEVER_GIVEN)).code;
    const said = await Promise.all(
      [place.label, stranger, 'NO-SUCH-CODE', '4006381333931', 'C-4K7QM3'].map((text) => reply(text)),
    );
    expect(said.map((one) => one.kind === 'nothing' && one.teach)).toEqual([false, false, true, true, false]);
    expect(said[0]).toMatchObject({ what: 'That is a place: Cabinet 2.' });
    expect(said[4]?.kind === 'nothing' && said[4].what).toContain('check character');
  });

  it('names no container that is used up', async () => {
    must(await discard(test.book, by(), { label: first, why: 'Spilt' }));
    const answer = await reply(GTIN);
    expect(answer.kind === 'choose' && answer.options.map(({ line }) => line.label)).not.toContain(first);
  });
});
