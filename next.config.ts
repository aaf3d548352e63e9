import type { NextConfig } from 'next';

const policy = [
  "default-src 'self'",
  // Next's inline bootstrap scripts; WebAssembly for the barcode decoder.
  "script-src 'self' 'unsafe-inline' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' blob: data:",
  "media-src 'self' blob:",
  "worker-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "frame-ancestors 'none'",
  "base-uri 'none'",
  "form-action 'self'",
].join('; ');

const config: NextConfig = {
  distDir: process.env.FLITCHBOOK_DIST ?? '.next',
  poweredByHeader: false,
  // `npm test` runs the compiler over everything, tests and scripts too.
  typescript: { ignoreBuildErrors: true },
  serverExternalPackages: [
    'better-sqlite3',
    'highs',
    '@prisma/adapter-better-sqlite3',
    '@prisma/adapter-pg',
    'pg',
    '@prisma/schema-engine-wasm',
    'pdfkit',
    'fontkit',
    'bwip-js',
    'sharp',
  ],
  // Both, because the proxy reads a body before the action does: a photo of 30 MB and the form around it.
  experimental: { serverActions: { bodySizeLimit: '32mb' }, proxyClientMaxBodySize: '32mb' },
  async headers() {
    return [
      {
        source: '/:path*',
        headers: [
          ...(process.env.NODE_ENV === 'production' ? [{ key: 'Content-Security-Policy', value: policy }] : []),
          { key: 'X-Content-Type-Options', value: 'nosniff' },
          { key: 'Referrer-Policy', value: 'same-origin' },
          { key: 'Permissions-Policy', value: 'camera=(self), microphone=(), geolocation=()' },
        ],
      },
    ];
  },
};

export default config;
