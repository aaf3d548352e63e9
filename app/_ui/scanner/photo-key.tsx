import styles from './scanner.module.css';

/** A key that takes a photo or chooses one; phones offer both. */
export function PhotoKey({ onPhoto, pending }: { onPhoto: (file: File) => void; pending: boolean }) {
  return (
    <label className={styles.photoKey} data-variant="ghost" aria-busy={pending || undefined}>
      <span aria-live="polite">{pending ? 'Looking at the photo…' : 'Photo'}</span>
      <input
        type="file"
        accept="image/*"
        className={styles.file}
        disabled={pending}
        onChange={(event) => {
          const input = event.currentTarget;
          const file = input.files?.[0];
          if (file) onPhoto(file);
          // So that the same file can be chosen again.
          input.value = '';
        }}
      />
    </label>
  );
}
