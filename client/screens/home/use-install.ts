import { useEffect, useState } from 'react'

/** What a browser offers when a page can be installed; it is in no standard type yet. */
interface InstallOffer extends Event {
  prompt(): Promise<unknown>
}

interface Install {
  readonly isInstalled: boolean
  /** Null where the browser offers nothing. */
  readonly install: (() => void) | null
}

/** Whether this page is installed, and the browser's own offer to install it. */
export function useInstall(): Install {
  const [offer, setOffer] = useState<InstallOffer | null>(null)
  const isInstalled = matchMedia('(display-mode: standalone)').matches
  useEffect(() => {
    const hear = (event: Event): void => {
      event.preventDefault()
      setOffer(event as InstallOffer)
    }
    window.addEventListener('beforeinstallprompt', hear)
    return () => window.removeEventListener('beforeinstallprompt', hear)
  }, [])
  return { isInstalled, install: offer ? () => void offer.prompt() : null }
}
