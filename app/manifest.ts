import type { MetadataRoute } from 'next';

/** What a phone needs to keep the book on its home screen. */
export default function manifest(): MetadataRoute.Manifest {
  return {
    name: 'Flitchbook',
    short_name: 'Flitchbook',
    description: 'The book a small furniture workshop keeps of its wood and its dated resin, finish and glue.',
    id: '/',
    start_url: '/arrive',
    scope: '/',
    display: 'standalone',
    background_color: '#f7f4ec',
    theme_color: '#f7f4ec',
    icons: [
      { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: '/icon-512.png', sizes: '512x512', type: 'image/png' },
      { src: '/icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
    shortcuts: [
      { name: 'Arrive', url: '/arrive' },
      { name: 'On hand', url: '/on-hand' },
      { name: 'Pull', url: '/pull' },
    ],
  };
}
