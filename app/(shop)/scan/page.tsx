import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { whatWasScanned } from '@/app/_server/codes/what-was-scanned';
import { KeyBar, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { showCode } from '@/app/_ui/scanner/show-code';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import { BrokenCode } from '@/app/(shop)/arrive/_ui/broken-code';
import { Safety } from '@/app/(shop)/pull/_ui/safety';
import { CorrectHere } from '@/app/(shop)/scan/_ui/correct-here';
import { ScanHere } from '@/app/(shop)/scan/_ui/scan-here';
import { sayScanned } from '@/app/(shop)/scan/say-scanned';

export const metadata: Metadata = { title: 'Scanned' };

type Query = Promise<Record<string, string | string[] | undefined>>;

/** Where a hand scanner's code lands from a page that takes none: what it is, and what can be done with it. */
export default async function ScanPage({ searchParams }: { searchParams: Query }) {
  const { book, head } = await bookForPage();
  const query = await searchParams;
  const one = (name: string) => [query[name] ?? []].flat()[0];
  const text = one('code')?.slice(0, 8192) ?? '';
  const symbology = one('sym')?.slice(0, 8);
  if (text.trim() === '') {
    return (
      <Page title="What is this?">
        <ScanHere />
      </Page>
    );
  }
  const scanned = await whatWasScanned(book, { text, symbology }, head.today);
  const { title, lines } = sayScanned(scanned, head.units);
  const arrive = `/arrive?${new URLSearchParams({ code: text, ...(symbology && { sym: symbology }) })}`;
  const broken = scanned.kind === 'unknown' ? scanned.malformed : undefined;
  return (
    <Page title={title}>
      <div style={{ flex: 1 }}>
        {lines.map((line) => (
          <p key={line} className={styles.plain}>
            {line}
          </p>
        ))}
        {broken ? (
          <>
            <BrokenCode text={text} malformed={broken} />
            {broken.code === 'too-long' ? null : (
              <div className={styles.correct}>
                <CorrectHere key={text} scan={{ text, symbology }} at={broken.at} />
              </div>
            )}
          </>
        ) : (
          <p className={styles.note}>
            Read: <span className={styles.code}>{showCode(text.slice(0, 300))}</span>
          </p>
        )}
        {scanned.kind === 'product' ? (
          <Safety
            kind={scanned.product.kind}
            hazards={scanned.product.hazards}
            safetySheet={scanned.product.safetySheet}
          />
        ) : null}
      </div>
      <KeyBar>
        {scanned.kind === 'container' ? (
          <>
            <LinkKey href={`/pull?label=${scanned.label}`}>Pull: may I use it?</LinkKey>
            <LinkKey variant="ghost" href={thingHref(scanned.label)}>
              Open its page
            </LinkKey>
            <LinkKey variant="ghost" href={`/arrive/move?things=${scanned.label}`}>
              Move it
            </LinkKey>
          </>
        ) : null}
        {scanned.kind === 'piece' ? (
          <>
            <LinkKey href={thingHref(scanned.label)}>Open its page</LinkKey>
            <LinkKey variant="ghost" href={`/arrive/move?things=${scanned.label}`}>
              Move it
            </LinkKey>
          </>
        ) : null}
        {scanned.kind === 'place' ? (
          <>
            <LinkKey href={thingHref(scanned.label)}>What stands there</LinkKey>
            <LinkKey variant="ghost" href={`/arrive/move?place=${scanned.label}`}>
              Move things here
            </LinkKey>
          </>
        ) : null}
        {scanned.kind === 'product' ? (
          <>
            <LinkKey href={arrive}>It just came in</LinkKey>
            <LinkKey variant="ghost" href={`/products/${scanned.product.productId}`}>
              Open the product
            </LinkKey>
          </>
        ) : null}
        {scanned.kind === 'unknown-product' || (scanned.kind === 'unknown' && !broken) ? (
          <LinkKey href={arrive}>Teach it</LinkKey>
        ) : null}
        {scanned.kind === 'label-without-product' || scanned.kind === 'not-in-book' || broken ? (
          <LinkKey href="/scan">Scan again</LinkKey>
        ) : (
          <LinkKey variant="ghost" href="/scan">
            Scan again
          </LinkKey>
        )}
      </KeyBar>
    </Page>
  );
}
