import { Code } from '@/app/_ui/code';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import { GHS_PICTOGRAMS, isGhsCode } from '@/shared/hazards/ghs-pictograms';

/** What a material warns of, in words beside the codes of its pictograms, and its safety data sheet, which stands above it. */
export function Hazards({ codes, safetySheet }: { codes: readonly string[]; safetySheet: string }) {
  return (
    <>
      {codes.length > 0 ? (
        <ul className={styles.hazards} aria-label="Hazards">
          {codes.map((code) => (
            <li key={code}>
              <Code>{code}</Code> {isGhsCode(code) ? GHS_PICTOGRAMS[code] : 'See its label'}
            </li>
          ))}
        </ul>
      ) : (
        <p className={styles.soft}>No hazard pictograms are in the book for it. Look at its label.</p>
      )}
      <p>
        {safetySheet ? (
          <a href={safetySheet} target="_blank" rel="noreferrer">
            Its safety data sheet
          </a>
        ) : (
          'Its safety data sheet'
        )}{' '}
        stands above anything said here{safetySheet ? '.' : '; its address is not in the book yet.'}
      </p>
    </>
  );
}
