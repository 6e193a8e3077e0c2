/** The browser comes from the system: nothing is downloaded, and nothing is fetched in the background. */
export const chromiumPath = process.env.CHROMIUM_PATH || '/usr/bin/chromium'

export const chromiumArgs = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]
