import { cookies, headers } from 'next/headers';
import type { Who } from '@/app/_server/who/who';

export const WHO_COOKIE = 'flitchbook-who';
const DEVICE_COOKIE = 'flitchbook-device';

/** The name this device was told, or "Maker"; and the device in words. */
export async function whoIsWriting(): Promise<Who> {
  const jar = await cookies();
  const agent = (await headers()).get('user-agent') ?? '';
  const who = decodeURIComponent(jar.get(WHO_COOKIE)?.value ?? '')
    .trim()
    .slice(0, 60);
  const device = decodeURIComponent(jar.get(DEVICE_COOKIE)?.value ?? '')
    .trim()
    .slice(0, 60);
  return { who: who || 'Maker', device: device || deviceOf(agent) };
}

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
