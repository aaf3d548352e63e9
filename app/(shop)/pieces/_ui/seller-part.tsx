import styles from '@/app/(shop)/pieces/_ui/seller-part.module.css';
import type { SellerRow } from '@/app/(shop)/pieces/compare-seller';

/** What the seller said beside what we measured. */
export function SellerPart({ name, rows }: { name: string; rows: readonly SellerRow[] }) {
  if (rows.length === 0) return null;
  return (
    <div className={styles.scroll}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">Figure</span>
            </th>
            <th scope="col">Ours</th>
            <th scope="col">{name || 'Seller'}</th>
            <th scope="col">Seller’s is</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ term, ours, theirs, difference }) => (
            <tr key={term}>
              <th scope="row">{term}</th>
              <td>{ours}</td>
              <td>{theirs}</td>
              <td>{difference}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
