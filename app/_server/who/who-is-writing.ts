import { cookies, headers } from 'next/headers';
import type { Who } from '@/app/_server/who/who';

const WHO_COOKIE = 'flitchbook-who';
const DEVICE_COOKIE = 'flitchbook-device';

/** The name this device was told, or "Maker"; and the device in words. */
export async function whoIsWriting(): Promise<Who> {
  const [told, otherwise] = await Promise.all([namesOnDevice(), nameOfVisitor()]);
  return { who: told.who || otherwise.who, device: told.device || otherwise.device };
}

/** Who writes from a device that was told no names. */
export async function nameOfVisitor(): Promise<Who> {
  return { who: 'Maker', device: deviceOf((await headers()).get('user-agent') ?? '') };
}

/** The names this device was told; empty where it was told none. */
export async function namesOnDevice(): Promise<Who> {
  const jar = await cookies();
  return { who: nameOf(jar.get(WHO_COOKIE)?.value), device: nameOf(jar.get(DEVICE_COOKIE)?.value) };
}

/** `cookies()` has decoded the value once already: decoding again would fail on a name with a per cent sign. */
const nameOf = (kept = '') => kept.trim().slice(0, 60);

function deviceOf(agent: string): string {
  const kind = /iPhone/.test(agent)
    ? 'iPhone'
    : /iPad/.test(agent)
      ? 'iPad'
      : /Android/.test(agent)
        ? 'Android phone'
        : /Windows/.test(agent)
          ? 'Windows computer'
          : /Mac OS/.test(agent)
            ? 'Mac'
            : /Linux/.test(agent)
              ? 'Linux computer'
              : 'a device';
  return kind;
}
