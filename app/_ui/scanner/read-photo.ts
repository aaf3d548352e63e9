import { judgePhotoFile, photoRefusalWords } from './photo-limits';
import { type Scan, scanOf } from './scan';

export type PhotoOutcome =
  | { readonly kind: 'read'; readonly scan: Scan }
  | { readonly kind: 'words'; readonly words: string };

const NOTHING_FOUND =
  'No code was found in that photo. Fill the picture with the label, hold it flat and in even light, or type the code.';
const NO_DECODER = 'The decoder could not be fetched. Check the connection and try again, or type the code.';

/** Looks for a code in a chosen file, on this device. Refuses by the file's header before anything is unpacked. */
export async function readPhoto(file: File): Promise<PhotoOutcome> {
  const judged = await judgePhotoFile(file);
  if (!judged.ok) return { kind: 'words', words: photoRefusalWords(judged.error, 'type the code') };

  const decoder = await import('./open-decoder').then(({ openDecoder }) => openDecoder()).catch(() => undefined);
  if (!decoder) return { kind: 'words', words: NO_DECODER };
  try {
    const [code] = await decoder.readPhoto(file);
    if (!code) return { kind: 'words', words: NOTHING_FOUND };
    return { kind: 'read', scan: scanOf(code, 'photo') };
  } catch {
    return { kind: 'words', words: cannotOpen(judged.value.kind) };
  } finally {
    decoder.close();
  }
}

function cannotOpen(kind: string): string {
  return kind === 'heic' || kind === 'avif'
    ? `This browser cannot open ${kind.toUpperCase()} photos. Set the phone’s camera to JPEG (“most compatible”), or type the code.`
    : 'That picture is damaged and cannot be opened. Take the photo again, or type the code.';
}
