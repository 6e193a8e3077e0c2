import { fileURLToPath } from 'node:url'
import { defineConfig } from '@playwright/test'

const path = (relative: string): string => fileURLToPath(new URL(relative, import.meta.url))

/** The browser comes from the system: nothing is downloaded, and nothing is fetched in the background. */
const executablePath = process.env.CHROMIUM_PATH || '/usr/bin/chromium'
const args = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

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
  reporter: [['list'], ['json', { outputFile: process.env.PLAYWRIGHT_JSON ?? path('../.cache/playwright.json') }]],
  use: {
    browserName: 'chromium',
    headless: true,
    launchOptions: { executablePath, args },
    screenshot: 'only-on-failure',
    trace: 'off',
  },
  projects: [
    { name: 'browser', testMatch: '**/*.spec.ts', testIgnore: '**/*.timing.spec.ts' },
    { name: 'timing', testMatch: '**/*.timing.spec.ts', workers: 1, fullyParallel: false },
  ],
})
