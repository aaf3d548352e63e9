/** A cured test pour seen from above on a bench, as SVG. */
export function drawPourCup(): string {
  const rings = [...Array(9).keys()]
    .map(
      (nr) => `<circle cx="${470 - nr * 4}" cy="${340 - nr * 3}" r="${232 - nr * 22}" fill="#f2dfae" opacity="0.16"/>`,
    )
    .join('');
  const planks = [...Array(7).keys()]
    .map(
      (nr) =>
        `<rect y="${nr * 103}" width="960" height="104" stroke="#8d7251" stroke-width="2" fill="${nr % 2 ? '#b99a74' : '#c1a37e'}"/>`,
    )
    .join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="960" height="720">${planks}
    <ellipse cx="500" cy="390" rx="270" ry="255" fill="#5b4632" opacity="0.35"/>
    <circle cx="470" cy="345" r="256" fill="#efe9dc" stroke="#cfc6b4" stroke-width="6"/>
    <circle cx="470" cy="345" r="236" fill="#d9b565"/>${rings}
    <path d="M300 260 Q360 170 470 150" fill="none" stroke="#fff8e6" stroke-width="16" stroke-linecap="round" opacity="0.7"/>
    <line x1="236" y1="352" x2="704" y2="338" stroke="#8d6a2a" stroke-width="3"/></svg>`;
}
