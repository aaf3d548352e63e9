'use client';

import { useState } from 'react';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { photoAction } from '@/app/(shop)/_parts/acts/actions';
import { PictureField } from '@/app/(shop)/_parts/acts/picture-field';

/** Puts a photo with a thing. */
export function PhotoAct({ stockId }: { stockId: number }) {
  const [photo, setPhoto] = useState<File>();
  const [caption, setCaption] = useState('');
  const [taken, setTaken] = useState(0);
  return (
    <Fold group="act" title="Add a photo">
      <ActForm
        action={photoAction}
        input={{ stockId, photo, caption }}
        words="Put the photo in the book"
        pendingWords="Sending the photo"
        done="The photo is in the book."
        onDone={() => {
          setPhoto(undefined);
          setCaption('');
          setTaken((count) => count + 1);
        }}
      >
        {(errors) => (
          <>
            <PictureField
              key={taken}
              label="Photo"
              hint="Where and when it was taken is stripped from it."
              onChange={setPhoto}
              error={errors.photo}
            />
            <TextField
              label="What it shows"
              optional
              value={caption}
              onChange={setCaption}
              maxLength={200}
              error={errors.caption}
            />
          </>
        )}
      </ActForm>
    </Fold>
  );
}
