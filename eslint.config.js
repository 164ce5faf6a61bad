import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

/** Nothing in core may know the time, chance, or the place it runs in: those are handed to it. */
const coreForbids = [
  { object: 'Date', property: 'now', message: 'Take the moment as a parameter.' },
  { object: 'Math', property: 'random', message: 'Take chance as a parameter.' },
  { object: 'performance', property: 'now', message: 'Take the moment as a parameter.' },
];

export default ts.config(
  { ignores: ['node_modules', '.svelte-kit', 'build', 'test-results', 'playwright-report'] },
  js.configs.recommended,
  ...ts.configs.recommended,
  ...svelte.configs.recommended,
  {
    languageOptions: { globals: { ...globals.browser, ...globals.node } },
    rules: {
      'no-undef': 'off',
      'no-restricted-exports': ['error', { restrictDefaultExports: { direct: false } }],
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_' },
      ],
      // Links are written from the root; the notebook is served from the root of its address.
      'svelte/no-navigation-without-resolve': 'off',
      // A space or a line break written as a string is one that the compiler must not trim.
      'svelte/no-useless-mustaches': 'off',
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              regex: '^#(core|ui)/[^/]+/.+',
              message: 'Import a folder through its door.',
            },
            { regex: '^\\$lib', message: 'Use the # imports: they lead to doors only.' },
          ],
        },
      ],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: {
      parserOptions: {
        extraFileExtensions: ['.svelte'],
        parser: ts.parser,
        svelteConfig,
      },
    },
    rules: { 'prefer-const': 'off' },
  },
  {
    files: ['src/lib/core/**/*.ts'],
    rules: {
      'no-restricted-properties': ['error', ...coreForbids],
      'no-restricted-syntax': [
        'error',
        {
          selector: "NewExpression[callee.name='Date'][arguments.length=0]",
          message: 'Take the moment as a parameter.',
        },
        {
          selector: 'MemberExpression[property.name=/^toLocale/]',
          message: 'Take the locale as a parameter and write the words yourself.',
        },
      ],
      'no-restricted-globals': [
        'error',
        'window',
        'document',
        'navigator',
        'localStorage',
        'process',
        'crypto',
      ],
    },
  },
);
