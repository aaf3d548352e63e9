import { type CameraTrouble, cameraTrouble } from './camera-trouble';
import { recall, remember } from './device-memory';

const CAMERA = 'camera';

export interface CameraChoice {
  readonly id: string;
  readonly name: string;
}

class CameraUnsupported extends Error {}

/** The same camera is opened next time. */
export function rememberCamera(deviceId: string): void {
  remember(CAMERA, deviceId);
}

/**
 * Opens the camera asked for, else the one used last on this device, else one that faces away, at 1920 × 1080 where it can.
 * Rejects as the browser does; `troubleOf` tells what that means.
 */
export async function openCameraStream(asked: string | undefined): Promise<MediaStream> {
  const deviceId = asked ?? recall(CAMERA);
  if (!navigator.mediaDevices?.getUserMedia) throw new CameraUnsupported();
  const size = { width: { ideal: 1920 }, height: { ideal: 1080 } };
  const anyBack: MediaStreamConstraints = { audio: false, video: { ...size, facingMode: { ideal: 'environment' } } };
  if (!deviceId) return navigator.mediaDevices.getUserMedia(anyBack);
  try {
    return await navigator.mediaDevices.getUserMedia({
      audio: false,
      video: { ...size, deviceId: { exact: deviceId } },
    });
  } catch (cause) {
    // The remembered camera is gone or was renamed; a refusal is final and not asked twice.
    if (cause instanceof DOMException && (cause.name === 'OverconstrainedError' || cause.name === 'NotFoundError')) {
      remember(CAMERA, undefined);
      return navigator.mediaDevices.getUserMedia(anyBack);
    }
    throw cause;
  }
}

/** Every camera of the device. Their names are told only once one has been allowed. */
export async function listCameras(): Promise<CameraChoice[]> {
  const devices = await navigator.mediaDevices.enumerateDevices();
  return devices
    .filter((device) => device.kind === 'videoinput' && device.deviceId !== '')
    .map((device, at) => ({ id: device.deviceId, name: device.label || `Camera ${at + 1}` }));
}

/** What a rejection of `openCameraStream` means. */
export function troubleOf(cause: unknown): CameraTrouble {
  if (!globalThis.isSecureContext) return 'insecure';
  if (cause instanceof CameraUnsupported) return 'unsupported';
  return cameraTrouble(cause instanceof DOMException ? cause.name : '', true);
}
