import { Key, KeyBar } from '@/app/_ui/keys';
import { PictureField } from '@/app/(shop)/_parts/acts/picture-field';
import styles from '@/app/(shop)/pieces/[label]/photo/_ui/photo.module.css';
import { ReferenceFields } from '@/app/(shop)/pieces/[label]/photo/_ui/reference-fields';
import type { usePhotoDraft } from '@/app/(shop)/pieces/[label]/photo/_ui/use-photo-draft';
import type { Picture } from '@/app/(shop)/pieces/[label]/photo/_ui/use-picture';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The photo, and what of known size is seen on it. */
export function PhotoStep({
  draft,
  picture,
  problems,
  wrong,
  prefer,
  onGoOn,
}: {
  draft: ReturnType<typeof usePhotoDraft>;
  picture: Picture;
  problems: Readonly<Record<string, string>>;
  /** Why the photo does not do. */
  wrong: string | undefined;
  prefer: UnitSystem;
  onGoOn: () => void;
}) {
  const { typed, file } = draft;
  const marked = typed.marks.length + typed.edge.length;
  return (
    <>
      <ol className={styles.steps}>
        <li>Lay a sheet of known size flat on face A, near the middle.</li>
        <li>Stand high, hold the phone level over it, and take in the whole slab.</li>
        <li>Mark the corners of the sheet, then tap round the edge of the wood.</li>
      </ol>
      <ReferenceFields typed={typed} problems={problems} prefer={prefer} onChange={draft.change} />
      <PictureField
        label={file ? 'Another photo' : 'The photo'}
        hint="Where and when it was taken is stripped from it."
        onChange={(photo) => {
          if (photo) draft.takePhoto(photo);
        }}
        error={picture.wrong ?? wrong}
      />
      {!file && marked > 0 ? (
        <p className={styles.says} role="status">
          The {marked} points you tapped are kept. Choose the same photo again to go on with them.
        </p>
      ) : null}
      {draft.isAnother ? (
        <div className={styles.kept} role="status">
          <p>The {marked} points here were tapped on another photo.</p>
          <Key variant="ghost" onClick={() => draft.change({ marks: [], edge: [], gaps: [] })}>
            Take them off
          </Key>
        </div>
      ) : null}
      {picture.src && picture.size ? (
        <figure className={styles.preview}>
          {/* biome-ignore lint/performance/noImgElement: the picture is on this device and never fetched */}
          <img src={picture.src} alt="As it will be measured" />
          <figcaption>
            {picture.size.width} × {picture.size.height} pixels
          </figcaption>
        </figure>
      ) : null}
      {draft.isFileKept ? null : (
        <p className={styles.says} role="status">
          This browser does not keep the photo over a reload. The points stay; the photo would have to be chosen again.
        </p>
      )}
      <KeyBar>
        <Key onClick={onGoOn}>{typed.reference === 'tapes' ? 'Mark the tapes' : 'Mark the corners'}</Key>
      </KeyBar>
    </>
  );
}
