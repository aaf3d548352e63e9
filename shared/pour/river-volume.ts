import { type SectionError, sectionVolume } from '@/shared/pour/section-volume';
import type { MeasuredVoid, PourVoid, VoidError } from '@/shared/pour/void-volume';
import { err, ok, type Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { microlitres } from '@/shared/units/stock-unit';

type River = Extract<PourVoid, { from: 'stations' }>;

/** A station in millimetres, every measure known. */
type Profile = { readonly top: number; readonly bottom: number; readonly depth: number };

/**
 * A river measured at stations. It is level at the top, so where it is shallower its floor lies higher; its banks run
 * straight from the width at the top to that at the bottom, which may be wider. The area under a level at a station is a
 * trapezium; along the river they go together by `sectionVolume`, a stretch left alone by its middle, half way between
 * its ends: exact where widths and depths run straight from station to station (a prismatoid; CRC mensuration formulas,
 * from memory); below a level that its floor rises through, as near as the stations lie. To the nearest microlitre. Fails where there are fewer than two stations, one is not further along than the
 * last, or it holds nothing. 100 mm wide at the top and 60 mm at the bottom, 40 mm deep, over 1 m are 3.2 L.
 */
export function ofStations({ depth, widths }: River): Result<MeasuredVoid, VoidError> {
  if (widths.length < 2) return err({ code: 'too-few-stations', station: Math.max(0, widths.length - 1) });
  for (const [nr, station] of widths.entries()) {
    if (!(station.width >= 0)) return err({ code: 'not-above-zero', field: `width ${nr + 1}` });
    if (station.bottom !== undefined && !(station.bottom >= 0)) {
      return err({ code: 'not-above-zero', field: `bottom width ${nr + 1}` });
    }
    if (!((station.depth ?? depth) > 0)) {
      return err({ code: 'not-above-zero', field: station.depth === undefined ? 'depth' : `depth ${nr + 1}` });
    }
  }
  const profiles = widths.map(
    (station): Profile => ({
      top: station.width / 1e6,
      bottom: (station.bottom ?? station.width) / 1e6,
      depth: (station.depth ?? depth) / 1e6,
    }),
  );
  const deepest = nanometres(Math.max(...widths.map((station) => station.depth ?? depth)));
  const volumeBelow = (height: Nanometres) => {
    const under = (profile: Profile) => areaUnder(profile, height / 1e6 - (deepest / 1e6 - profile.depth));
    return sectionVolume(
      widths.map(({ at }, nr) => ({ at, area: under(profiles[nr] ?? NOTHING) })),
      (nr) => under(halfWay(profiles[nr] ?? NOTHING, profiles[nr + 1] ?? NOTHING)),
    );
  };
  const whole = volumeBelow(deepest);
  if (!whole.ok) return err(ofSections(whole.error));
  const holds = whole.value.volume;
  if (holds === 0) return err({ code: 'not-above-zero', field: 'width' });
  const below = (height: Nanometres) => {
    const part = volumeBelow(nanometres(Math.min(height, deepest)));
    return part.ok ? part.value.volume : microlitres(0);
  };
  return ok({ depth: deepest, holds, wood: microlitres(0), below });
}

const NOTHING: Profile = { top: 0, bottom: 0, depth: 0 };

/** Square millimetres of a trapezium that stands on its bottom, up to a level over it. */
function areaUnder({ top, bottom, depth }: Profile, level: number): number {
  if (!(level > 0 && depth > 0)) return 0;
  const high = Math.min(level, depth);
  const width = bottom + ((top - bottom) * high) / depth;
  return (high * (bottom + width)) / 2;
}

const halfWay = (one: Profile, two: Profile): Profile => ({
  top: (one.top + two.top) / 2,
  bottom: (one.bottom + two.bottom) / 2,
  depth: (one.depth + two.depth) / 2,
});

const ofSections = ({ code, section }: SectionError): VoidError =>
  code === 'bad-area'
    ? { code: 'not-above-zero', field: `width ${section + 1}` }
    : { code: code === 'too-few-sections' ? 'too-few-stations' : 'stations-out-of-order', station: section };
