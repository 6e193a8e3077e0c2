import { outingRoutes, routes } from '#client/screens/routes.ts'

/** Every screen of the client by its address, and the one that is shown where an address leads nowhere. */
export const screenNames = [...Object.keys(routes), ...Object.keys(outingRoutes), 'nowhere'] as readonly string[]

const patterns = Object.entries({ ...routes, ...outingRoutes }).map(([name, path]) => [name, patternOf(path)] as const)

function patternOf(path: string): RegExp {
  const parts = path.replace(/\/\*\?$/, '(/.*)?').replaceAll(/\/:\w+\?/g, '(/[^/]+)?')
  return new RegExp(`^${parts.replaceAll(/:\w+/g, '[^/]+')}$`)
}

/** The screen that an address of the product shows, by what stands behind its `#`. */
export function screenAt(url: string): string {
  const path = new URL(url).hash.slice(1) || '/'
  return patterns.find(([, pattern]) => pattern.test(path))?.[0] ?? 'nowhere'
}

/** The screens that nobody has seen. */
export const unseen = (seen: ReadonlySet<string>): readonly string[] => screenNames.filter(name => !seen.has(name))
