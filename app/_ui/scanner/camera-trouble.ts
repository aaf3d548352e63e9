/** Why there is no picture. */
export type CameraTrouble = 'refused' | 'none' | 'insecure' | 'busy' | 'unsupported' | 'failed';

/** What a failed request for the camera means, from the name of its exception (W3C Media Capture and Streams, 10.2). */
export function cameraTrouble(exceptionName: string, isSecureContext: boolean): CameraTrouble {
  if (!isSecureContext) return 'insecure';
  switch (exceptionName) {
    case 'NotAllowedError':
    case 'SecurityError':
      return 'refused';
    case 'NotFoundError':
    case 'OverconstrainedError':
      return 'none';
    case 'NotReadableError':
    case 'AbortError':
      return 'busy';
    default:
      return 'failed';
  }
}

/** What happened and what to do. Each ends with the ways that still work. */
export function cameraTroubleWords(trouble: CameraTrouble): { readonly what: string; readonly todo: string } {
  switch (trouble) {
    case 'refused':
      return {
        what: 'The camera is not allowed here.',
        todo: 'Allow it in the browser’s settings for this page, then press Open camera. A photo, typing or a hand scanner works without it.',
      };
    case 'none':
      return {
        what: 'This device has no camera we can find.',
        todo: 'Type the code, choose a photo, or use a hand scanner: it works on every page.',
      };
    case 'insecure':
      return {
        what: 'The browser gives the camera only to a secure page.',
        todo: 'Open this page by its https:// address, or as localhost on the computer that runs it. A photo, typing or a hand scanner works here too.',
      };
    case 'busy':
      return {
        what: 'Another program is using the camera.',
        todo: 'Close it and press Open camera. A photo, typing or a hand scanner works meanwhile.',
      };
    case 'unsupported':
      return {
        what: 'This browser cannot open a camera.',
        todo: 'Take a photo of the label, type the code, or use a hand scanner.',
      };
    case 'failed':
      return {
        what: 'The camera did not start.',
        todo: 'Press Open camera to try again, or take a photo, type the code, or use a hand scanner.',
      };
  }
}
