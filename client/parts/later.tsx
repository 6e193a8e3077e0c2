import { type ComponentType, type ReactNode, useCallback, useEffect, useState } from 'react'
import { renewPage } from '../device/page-renewal.ts'
import { Loading } from './Loading.tsx'
import { FetchAgain, NotFetched } from './NotFetched.tsx'

/** Code that is fetched when it is first shown, so that scoring a hole needs little. */
interface Later<Code> {
  readonly fetch: () => Promise<Code>
  /** Null until it is here. */
  readonly fetched: () => Code | null
}

type Load<Props> = () => Promise<ComponentType<Props>>

const all: { readonly fetch: () => Promise<unknown> }[] = []

/**
 * A screen whose code comes later. Not React's own `lazy`, which keeps the stand-in on the page for 300 ms however soon
 * the code is there, and never asks again for what could not be fetched.
 */
export function lazyScreen<Props extends object>(load: Load<Props>): ComponentType<Props> {
  const later = laterOf(load)
  // biome-ignore lint/correctness/noComponentHookFactories: made once a screen, at the top of a module.
  return function LazyScreen(props: Props) {
    const { code: Shown, isMissing, again } = useLater(later)
    if (Shown) return <Shown {...props} />
    return isMissing ? <NotFetched onAgain={() => renewPage(again)} /> : <Loading />
  }
}

interface PartTerms {
  /** What stands on the page until the part is here. */
  readonly standIn?: ReactNode
  /** It was asked for by a tap; any other part that could not be fetched is left out without a word. */
  readonly isAskedFor?: true
}

/** A part of a screen whose code comes later. */
export function lazyPart<Props extends object>(
  load: Load<Props>,
  { standIn = null, isAskedFor }: PartTerms = {},
): ComponentType<Props> {
  const later = laterOf(load)
  // biome-ignore lint/correctness/noComponentHookFactories: made once a part, at the top of a module.
  return function LazyPart(props: Props) {
    const { code: Shown, isMissing, again } = useLater(later)
    if (Shown) return <Shown {...props} />
    if (!isMissing) return standIn
    return isAskedFor ? <FetchAgain onAgain={() => renewPage(again)} /> : null
  }
}

/** Code that is asked for while the page begins, since it is shown next. */
export function fetchSoon<Code>(load: () => Promise<Code>): Later<Code> {
  const later = laterOf(load)
  later.fetch().catch(() => undefined)
  return later
}

/** Null until it is here. */
export const useFetched = <Code,>(later: Later<Code>): Code | null => useLater(later).code

function laterOf<Code>(load: () => Promise<Code>): Later<Code> {
  let fetched: Code | null = null
  const fetch = async () => {
    fetched ??= await load()
    return fetched
  }
  const later = { fetch, fetched: () => fetched }
  all.push(later)
  return later
}

function useLater<Code>({ fetch, fetched }: Later<Code>) {
  const [found, show] = useState(fetched)
  const [isMissing, setMissing] = useState(false)
  const again = useCallback(async () => {
    const code = await fetch().catch(() => null)
    if (code !== null) show(() => code)
    setMissing(code === null)
    return code !== null
  }, [fetch])
  useEffect(() => {
    if (fetched() === null) void again()
  }, [fetched, again])
  return { code: found ?? fetched(), isMissing, again }
}

/** Milliseconds between two pieces where the browser does not tell when it is idle. */
const restMs = 200

/** Fetches the rest piece by piece while the page has nothing else to do; what comes may bring more of it. */
export async function fetchRest(): Promise<void> {
  for (const { fetch } of all) {
    await whenIdle()
    await fetch().catch(() => undefined)
  }
}

const whenIdle = (): Promise<unknown> =>
  new Promise(resolve => {
    if ('requestIdleCallback' in window) window.requestIdleCallback(resolve)
    else setTimeout(resolve, restMs)
  })
