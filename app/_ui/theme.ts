import { type CSSVariablesResolver, createTheme } from '@mantine/core';

/** Sizes and faces of the look for the parts that come from Mantine; the colours follow the tokens in `globals.css`. */
export const theme = createTheme({
  fontFamily: 'var(--font)',
  fontFamilyMonospace: 'var(--font-code)',
  fontSizes: { xs: '1rem', sm: '1rem', md: '1.125rem', lg: '1.375rem', xl: '1.875rem' },
  lineHeights: { xs: '1.4', sm: '1.4', md: '1.4', lg: '1.25', xl: '1.2' },
  headings: {
    fontFamily: 'var(--font)',
    fontWeight: '700',
    sizes: {
      h1: { fontSize: '1.875rem', lineHeight: '1.2' },
      h2: { fontSize: '1.375rem', lineHeight: '1.2' },
      h3: { fontSize: '1.125rem', lineHeight: '1.3' },
      h4: { fontSize: '1.125rem', lineHeight: '1.3' },
      h5: { fontSize: '1rem', lineHeight: '1.4' },
      h6: { fontSize: '1rem', lineHeight: '1.4' },
    },
  },
  radius: { xs: '3px', sm: '6px', md: '10px', lg: '10px', xl: '10px' },
  defaultRadius: 'md',
  shadows: { xs: 'none', sm: 'none', md: 'none', lg: 'none', xl: 'none' },
  respectReducedMotion: true,
  cursorType: 'pointer',
  activeClassName: '',
});

const inks = {
  '--mantine-color-body': 'var(--paper)',
  '--mantine-color-text': 'var(--ink)',
  '--mantine-color-bright': 'var(--ink)',
  '--mantine-color-dimmed': 'var(--soft)',
  '--mantine-color-placeholder': 'var(--soft)',
  '--mantine-color-error': 'var(--stop)',
  '--mantine-color-success': 'var(--use)',
  '--mantine-color-anchor': 'var(--ink)',
  '--mantine-color-default': 'var(--sheet)',
  '--mantine-color-default-hover': 'var(--paper)',
  '--mantine-color-default-color': 'var(--ink)',
  '--mantine-color-default-border': 'var(--line)',
  '--mantine-primary-color-filled': 'var(--ink)',
  '--mantine-primary-color-filled-hover': 'var(--ink)',
};

/** Both schemes read the same tokens; the tokens themselves change with the scheme. */
export const cssVariables: CSSVariablesResolver = () => ({ variables: {}, light: inks, dark: inks });
