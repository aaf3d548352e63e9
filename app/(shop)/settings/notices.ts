/** Work of others that this program stands on, and on what terms. */
export type Notice = { name: string; licence: string; by: string };

export const FONTS: readonly Notice[] = [
  {
    name: 'Atkinson Hyperlegible Next',
    licence: 'SIL Open Font License 1.1',
    by: '© 2020–2024 The Atkinson Hyperlegible Next Project Authors',
  },
  {
    name: 'Atkinson Hyperlegible Mono',
    licence: 'SIL Open Font License 1.1',
    by: '© 2020–2024 The Atkinson Hyperlegible Mono Project Authors',
  },
];

export const DATA: readonly Notice[] = [
  {
    name: 'GS1 Barcode Syntax Dictionary, condensed and with two entries given titles',
    licence: 'Apache License 2.0',
    by: '© 2020–2021 BWIPP project, © 2020–2021 Zint Project, © 2021–2025 GS1 AISBL',
  },
];

/** Libraries by the name of their package. */
export const LIBRARIES: readonly (Notice & { packages: readonly string[] })[] = [
  { name: 'Next.js', packages: ['next'], licence: 'MIT', by: '© 2025 Vercel, Inc.' },
  { name: 'React', packages: ['react', 'react-dom'], licence: 'MIT', by: '© Meta Platforms, Inc. and affiliates' },
  { name: 'Mantine', packages: ['@mantine/core', '@mantine/hooks'], licence: 'MIT', by: '© 2021 Vitaly Rtishchev' },
  {
    name: 'TanStack Virtual',
    packages: ['@tanstack/react-virtual'],
    licence: 'MIT',
    by: '© 2021–present Tanner Linsley',
  },
  {
    name: 'Prisma',
    packages: [
      'prisma',
      '@prisma/client',
      '@prisma/adapter-better-sqlite3',
      '@prisma/adapter-pg',
      '@prisma/driver-adapter-utils',
      '@prisma/schema-engine-wasm',
    ],
    licence: 'Apache License 2.0',
    by: '© Prisma Data, Inc. and contributors',
  },
  {
    name: 'better-sqlite3',
    packages: ['better-sqlite3'],
    licence: 'MIT',
    by: '© 2017 Joshua Wise; SQLite is in the public domain',
  },
  {
    name: 'node-postgres',
    packages: ['pg'],
    licence: 'MIT',
    by: '© 2010–2021 Brian Carlson',
  },
  {
    name: 'zxing-wasm, with zxing-cpp',
    packages: ['zxing-wasm'],
    licence: 'MIT and Apache License 2.0',
    by: '© 2023 Ze-Zheng Wu, the ZXing-C++ authors; Zint (BSD 3-Clause)',
  },
  {
    name: 'ZXing for JavaScript',
    packages: ['@zxing/library', '@zxing/browser'],
    licence: 'Apache License 2.0 and MIT',
    by: '© 2018 ZXing for JS',
  },
  {
    name: 'clipper2-ts, after Clipper2',
    packages: ['clipper2-ts'],
    licence: 'Boost Software License 1.0',
    by: '© 2010–2025 Angus Johnson; in TypeScript by Jeremy Tribby',
  },
  { name: 'bwip-js', packages: ['bwip-js'], licence: 'MIT', by: '© 2011–2026 Mark Warren' },
  { name: 'PDFKit and fontkit', packages: ['pdfkit', 'fontkit'], licence: 'MIT', by: '© 2014 Devon Govett' },
  {
    name: 'sharp, with libvips',
    packages: ['sharp'],
    licence: 'Apache License 2.0; libvips LGPL 3.0 or later',
    by: '© 2013 Lovell Fuller and others',
  },
  {
    name: 'currency-codes',
    packages: ['currency-codes'],
    licence: 'MIT',
    by: '© 2018–present Tobias Baunbæk Christensen',
  },
  { name: 'highs-js, with HiGHS', packages: ['highs'], licence: 'MIT', by: '© 2023 highs-js, © 2026 HiGHS' },
  { name: 'ical-generator', packages: ['ical-generator'], licence: 'MIT', by: '© 2026 Sebastian Pekarek' },
  { name: 'Zod', packages: ['zod'], licence: 'MIT', by: '© 2025 Colin McDonnell' },
  { name: 'tsx', packages: ['tsx'], licence: 'MIT', by: '© Hiroki Osame' },
];
