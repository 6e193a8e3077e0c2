import { fileURLToPath } from 'node:url'
import { defineConfig } from '@playwright/test'
import { chromiumArgs, chromiumPath } from './browser/kit/chromium.ts'

const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url))

/** Every test starts its own server on a free port; `*.timing.spec.ts` measures time and runs alone. */
export default defineConfig({
  testDir: path('browser'),
  outputDir: path('../.cache/playwright'),
  tsconfig: path('tsconfig.json'),
  timeout: 180_000,
  expect: { timeout: 15_000 },
  retries: 0,
  workers: 2,
  forbidOnly: true,
  reporter: [
    ['list'],
    ['json', { outputFile: process.env.PLAYWRIGHT_JSON ?? path('../.cache/playwright.json') }],
    [path('browser/kit/visits.ts')],
  ],
  use: {
    browserName: 'chromium',
    headless: true,
    launchOptions: { executablePath: chromiumPath, args: chromiumArgs },
    screenshot: 'only-on-failure',
    trace: 'off',
  },
  projects: [
    { name: 'browser', testMatch: '**/*.spec.ts', testIgnore: '**/*.timing.spec.ts' },
    { name: 'timing', testMatch: '**/*.timing.spec.ts', workers: 1, fullyParallel: false },
  ],
})
