import { acceptCodes, type Doubtful } from './acceptance';
import type { DecodedCode } from './decoded-code';
import { type FramePass, passesForFrame } from './frame-schedule';
import { lookForCodes, type ReadPixels } from './look-for-codes';
import { blurGray } from './pixels/blur-gray';
import type { ColourFrame } from './pixels/gray-frame';
import { sharpenGray } from './pixels/sharpen-gray';
import { toColour } from './pixels/to-colour';
import { toGray } from './pixels/to-gray';
import { turnGray } from './pixels/turn-gray';

export interface CameraFrame {
  /** All the camera sees, brought down to `WHOLE_FRAME`. */
  readonly whole: () => ColourFrame;
  /** Its middle, `CENTRE_WINDOW`, at the camera's own resolution. */
  readonly centre: () => ColourFrame;
}

/**
 * Looks at one camera frame in the ways its number in the schedule calls for, until a code may be believed.
 * Hand `doubtful` on to the next frame.
 */
export async function decodeFrame(
  read: ReadPixels,
  frame: CameraFrame,
  number: number,
  doubtful: Doubtful,
): Promise<{ readonly accepted: readonly DecodedCode[]; readonly doubtful: Doubtful }> {
  let waiting = doubtful;
  for (const pass of passesForFrame(number)) {
    const judged = acceptCodes(await runPass(read, frame, pass), number, waiting);
    waiting = judged.doubtful;
    if (judged.accepted.length > 0) return judged;
  }
  return { accepted: [], doubtful: waiting };
}

function runPass(read: ReadPixels, frame: CameraFrame, pass: FramePass): Promise<DecodedCode[]> {
  switch (pass) {
    case 'fast':
    case 'harder':
    case 'harder-inverted':
      return lookForCodes(read, frame.whole(), pass);
    case 'centre':
      return lookForCodes(read, frame.centre(), 'harder');
    case 'sharpen':
      return lookForCodes(read, toColour(sharpenGray(toGray(frame.centre()))), 'harder');
    case 'blur':
      return lookForCodes(read, toColour(blurGray(toGray(frame.centre()))), 'harder');
    case 'turn-30':
      return lookForCodes(read, toColour(turnGray(toGray(frame.centre()), 30)), 'harder');
    case 'turn-45':
      return lookForCodes(read, toColour(turnGray(toGray(frame.centre()), 45)), 'harder');
    case 'turn-60':
      return lookForCodes(read, toColour(turnGray(toGray(frame.centre()), 60)), 'harder');
  }
}
