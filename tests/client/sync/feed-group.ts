/** Whether an op of this scope is in a feed. */
export const groupOfFeedOf = (feed: string, scope: string | null): boolean =>
  feed === 'all' || scope === null || feed === `g/${scope}`
