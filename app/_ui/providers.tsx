'use client';

import { MantineProvider } from '@mantine/core';
import type { ReactNode } from 'react';
import { NoticeProvider } from '@/app/_ui/notice/notice-provider';
import { cssVariables, theme } from '@/app/_ui/theme';

/** What every page stands on: the theme, the light or dark setting, and the place where notices are said. */
export function Providers({ children }: { children: ReactNode }) {
  return (
    <MantineProvider
      theme={theme}
      defaultColorScheme="auto"
      cssVariablesResolver={cssVariables}
      withGlobalClasses={false}
      withStaticClasses={false}
    >
      <NoticeProvider>{children}</NoticeProvider>
    </MantineProvider>
  );
}
