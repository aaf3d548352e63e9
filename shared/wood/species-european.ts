import type { SpeciesRow } from '@/shared/wood/species';

const G = 'en-350-memory';
const C = 'din-68100-memory';
const SM = 'table-4-4-memory';

/** Hardwoods of Europe. Gravity at 12 % is the mean density of the standard divided by 1120 kg/m³. */
export const EUROPEAN_HARDWOODS: readonly SpeciesRow[] = [
  {
    id: 'european-ash',
    name: 'European ash',
    botanical: 'Fraxinus excelsior',
    aliases: ['ash', 'common ash'],
    gravity: [[null, 0.63], G],
    move: [[0.0021, 0.0038], C],
  },
  {
    id: 'european-beech',
    name: 'European beech',
    botanical: 'Fagus sylvatica',
    aliases: ['beech'],
    gravity: [[null, 0.63], G],
    move: [[0.002, 0.0041], C],
  },
  {
    id: 'wild-cherry',
    name: 'Wild cherry',
    botanical: 'Prunus avium',
    aliases: ['european cherry', 'gean'],
    gravity: [[null, 0.56], G],
  },
  {
    id: 'sweet-chestnut',
    name: 'Sweet chestnut',
    botanical: 'Castanea sativa',
    aliases: ['spanish chestnut'],
    gravity: [[null, 0.53], G],
  },
  {
    id: 'wych-elm',
    name: 'Wych elm',
    botanical: 'Ulmus glabra',
    aliases: ['scots elm', 'elm'],
    gravity: [[null, 0.58], G],
  },
  {
    id: 'european-lime',
    name: 'European lime',
    botanical: 'Tilia spp.',
    aliases: ['lime', 'linden'],
    gravity: [[null, 0.48], G],
  },
  {
    id: 'european-oak',
    name: 'European oak',
    botanical: 'Quercus robur, Quercus petraea',
    aliases: ['oak', 'english oak', 'french oak'],
    gravity: [[null, 0.63], G],
    move: [[0.0016, 0.0036], C],
  },
  { id: 'olive', name: 'Olive', botanical: 'Olea europaea', aliases: ['olivewood'] },
  { id: 'pear', name: 'Pear', botanical: 'Pyrus communis', aliases: ['pearwood'] },
  { id: 'london-plane', name: 'London plane', botanical: 'Platanus × hispanica', aliases: ['plane', 'lacewood'] },
  {
    id: 'sycamore-maple',
    name: 'Sycamore',
    botanical: 'Acer pseudoplatanus',
    aliases: ['sycamore maple', 'european sycamore'],
    gravity: [[null, 0.57], G],
  },
  {
    id: 'european-walnut',
    name: 'European walnut',
    botanical: 'Juglans regia',
    aliases: ['walnut', 'english walnut', 'french walnut'],
    gravity: [[null, 0.6], G],
    shrink: [[4.3, 6.4, 11.6], SM],
    move: [[0.0018, 0.0029], C],
  },
];

/** Softwoods of Europe. */
export const EUROPEAN_SOFTWOODS: readonly SpeciesRow[] = [
  {
    id: 'european-larch',
    name: 'European larch',
    botanical: 'Larix decidua',
    aliases: ['larch'],
    gravity: [[null, 0.54], G],
    move: [[0.0014, 0.003], C],
  },
  {
    id: 'scots-pine',
    name: 'Scots pine',
    botanical: 'Pinus sylvestris',
    aliases: ['baltic pine'],
    gravity: [[null, 0.46], G],
    move: [[0.0019, 0.0036], C],
  },
  {
    id: 'norway-spruce',
    name: 'Norway spruce',
    botanical: 'Picea abies',
    aliases: ['whitewood', 'european spruce'],
    gravity: [[null, 0.41], G],
    move: [[0.0019, 0.0039], C],
  },
  { id: 'yew', name: 'Yew', botanical: 'Taxus baccata' },
];
