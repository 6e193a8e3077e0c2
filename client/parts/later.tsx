import { type ComponentType, type LazyExoticComponent, lazy, useEffect, useState } from 'react'
import { Loading } from './Loading.tsx'

type Load<Props> = () => Promise<ComponentType<Props>>

/** What loads the code that comes when it is first shown, so that scoring a hole needs little. */
const loads: (() => Promise<unknown>)[] = []

/**
 * A screen whose code comes later. Not React's own `lazy`, which keeps the stand-in on the page for 300 ms however soon
 * the code is there.
 */
export function lazyScreen<Props extends object>(load: Load<Props>): ComponentType<Props> {
  loads.push(load)
  let loaded: ComponentType<Props> | null = null
  // biome-ignore lint/correctness/noComponentHookFactories: made once a screen, at the top of a module.
  return function LazyScreen(props: Props) {
    const [Screen, setScreen] = useState(() => loaded)
    const [fault, setFault] = useState<Error | null>(null)
    useEffect(() => {
      if (Screen) return
      load().then(
        found => {
          loaded = found
          setScreen(() => found)
        },
        (error: unknown) => setFault(new Error('a screen could not be loaded', { cause: error })),
      )
    }, [Screen])
    if (fault) throw fault
    return Screen ? <Screen {...props} /> : <Loading />
  }
}

/** A part of a screen whose code comes later; what stands in for it is the nearest `Suspense`'s. */
export function lazyPart<Props extends object>(load: Load<Props>): LazyExoticComponent<ComponentType<Props>> {
  loads.push(load)
  return lazy(async () => ({ default: await load() }))
}

/** Loads all of it, for a page that nothing keeps on the phone; what comes may bring more of it. */
export async function loadAll(): Promise<void> {
  for (const load of loads) await load()
}
