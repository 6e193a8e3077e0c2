import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))
const timing = 'tests/**/*.timing.test.ts'

/** Two at a time; what measures time (`*.timing.test.ts`) runs alone, after the rest. */
export default defineConfig({
  root,
  define: { __BUILD__: JSON.stringify('test'), __FILES__: '[]' },
  test: {
    testTimeout: 60_000,
    hookTimeout: 60_000,
    maxWorkers: 2,
    reporters: ['default', 'json'],
    outputFile: { json: '.cache/vitest.json' },
    projects: [
      {
        extends: true,
        test: {
          name: 'tests',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: [timing, 'tests/fixtures/**'],
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: { name: 'timing', include: [timing], maxWorkers: 1, fileParallelism: false, sequence: { groupOrder: 1 } },
      },
    ],
  },
})
