/** What the server says of an op, as tests expect it. */
export const stored = (seq: number) => ({ kind: 'stored', seq })
export const alreadyStored = (seq: number) => ({ kind: 'already stored', seq })
export const refused = (code: string, path: string) => ({ kind: 'refused', code, path })
export const later = (reason: string) => ({ kind: 'later', reason })
