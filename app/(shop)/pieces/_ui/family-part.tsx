import Link from 'next/link';
import type { PageBook } from '@/app/_server/book/book-for-page';
import { type FamilyPiece, readFamily } from '@/app/_server/cuts/read-family';
import { Code } from '@/app/_ui/code';
import { Section } from '@/app/_ui/section';
import { outlinePath } from '@/app/_ui/slab/paths';
import { SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import { sayPiece } from '@/app/(shop)/_parts/stock/say-piece';
import styles from '@/app/(shop)/pieces/_ui/family.module.css';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { UnitSystem } from '@/shared/units/unit-system';

const DONE: Readonly<Record<string, string>> = {
  cut: 'Cut',
  rip: 'Ripped',
  resaw: 'Resawn',
  break: 'Broken',
  unstrap: 'Fell apart without its bands',
  take: 'Boards were taken out',
};

/** The family of a piece as a picture: what it was cut from and what was cut from it, all to one scale. */
export async function FamilyPart({ book, stockId, prefer }: { book: PageBook; stockId: number; prefer: UnitSystem }) {
  const family = await readFamily(book, stockId);
  if (!family) return null;
  const wholeMm = Math.max(...all(family).map(lengthMm));
  return (
    <Section title="Its family" aside={`${all(family).length} pieces, to one scale`}>
      <ul className={styles.family}>
        <Branch piece={family} here={stockId} wholeMm={wholeMm} prefer={prefer} />
      </ul>
      <p className={styles.how}>Hatched wood went to scrap. What is no longer in the shop is faint.</p>
    </Section>
  );
}

interface BranchProps {
  piece: FamilyPiece;
  here: number;
  wholeMm: number;
  prefer: UnitSystem;
}

function Branch({ piece, here, wholeMm, prefer }: BranchProps) {
  const { line, outline, cut, children } = piece;
  const { title, size } = sayPiece(line, prefer);
  const shown = printOwnLabel(line.label);
  const isHere = line.stockId === here;
  const { flags } = line.facts;
  const live = { left: flags.includes('live-edge-left'), right: flags.includes('live-edge-right') };
  const hatch = `scrap-${line.label}`;
  return (
    <li data-here={isHere || undefined}>
      <div className={styles.piece} data-gone={!line.facts.inStock || undefined}>
        {outline ? (
          <div className={styles.picture}>
            <SlabDrawing outline={outline} live={live} wholeMm={wholeMm} label={`${title} ${shown}, ${size}`}>
              {cut ? (
                <>
                  <defs>
                    <pattern
                      id={hatch}
                      width="40"
                      height="40"
                      patternUnits="userSpaceOnUse"
                      patternTransform="rotate(45)"
                    >
                      <rect className={styles.hatch} width="20" height="40" />
                    </pattern>
                  </defs>
                  {cut.scrap.map((each) => {
                    const d = outlinePath(each);
                    return (
                      <g key={d}>
                        <path d={d} style={{ fill: `url(#${hatch})` }} />
                        <path className={styles.cutEdge} d={d} />
                      </g>
                    );
                  })}
                  {cut.parts.map((each) => {
                    const d = outlinePath(each);
                    return <path key={d} className={styles.cutEdge} d={d} />;
                  })}
                </>
              ) : null}
            </SlabDrawing>
          </div>
        ) : null}
        <p className={styles.words}>
          {isHere ? (
            <b>This one</b>
          ) : (
            <Link href={`/pieces/${line.label}`} className={styles.link}>
              {title}
            </Link>
          )}{' '}
          <Code>{shown}</Code>
        </p>
        <p className={styles.soft}>
          {[size, sayCut(piece), line.facts.inStock ? line.place : null].filter(Boolean).join('. ')}
        </p>
      </div>
      {children.length > 0 ? (
        <ul className={styles.children}>
          {children.map((child) => (
            <Branch key={child.line.stockId} piece={child} here={here} wholeMm={wholeMm} prefer={prefer} />
          ))}
        </ul>
      ) : null}
    </li>
  );
}

function sayCut({ line, cut, children }: FamilyPiece): string | null {
  if (children.length === 0) return line.facts.inStock ? null : 'No longer in the shop';
  if (!cut) return DONE.take ?? null;
  const scrap = cut.scrap.length > 0 ? `, ${cut.scrap.length} to scrap` : '';
  const dust = cut.sawdust > 0 ? `, ${(100 * cut.sawdust).toFixed(1)} % sawdust` : '';
  return `${DONE[cut.kind] ?? DONE.cut} into ${children.length + cut.scrap.length}${scrap}${dust}`;
}

const all = (piece: FamilyPiece): FamilyPiece[] => [piece, ...piece.children.flatMap(all)];

function lengthMm({ outline }: FamilyPiece): number {
  if (!outline) return 0;
  const { left, right } = boundsOf(outline.ring);
  return (right - left) / 1000;
}
