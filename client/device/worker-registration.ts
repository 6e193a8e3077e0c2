/** Whether this page can be kept to start with no signal: https and localhost alone. */
export const canSleep = (): boolean => window.isSecureContext && 'serviceWorker' in navigator

/** Keeps the app on the phone. A new version waits until no page is open or one says so. */
export function registerWorker(): void {
  if (!canSleep() || import.meta.env.DEV) return
  navigator.serviceWorker.register('/worker.js', { scope: '/' }).catch(() => {
    // The app works all the same while a server can be reached.
  })
}

/** True when a newer version is here and waits for the open pages to go. */
export async function hasNewVersion(): Promise<boolean> {
  if (!canSleep()) return false
  const registration = await navigator.serviceWorker.getRegistration('/')
  return registration?.waiting != null
}

/** Lets the waiting version take over and shows it; does nothing when none waits. */
export async function takeNewVersion(): Promise<void> {
  const registration = canSleep() ? await navigator.serviceWorker.getRegistration('/') : undefined
  if (!registration?.waiting) return
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
  registration.waiting.postMessage('take over')
}
