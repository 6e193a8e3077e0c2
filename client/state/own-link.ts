import { formatJoinLink, type JoinLink, parseJoinLink } from './join-link.ts'

/** A player's own code: as an invite's, but for a log of the player's. The secret stands in the fragment. */
export const formatOwnLink = (page: string, link: JoinLink): string =>
  formatJoinLink(page, link).replace('#/join/', '#/own/')

/** Reads a code or its fragment; null when it is none. */
export const parseOwnLink = (text: string): JoinLink | null =>
  text.includes('#/own/') || text.startsWith('/own/') ? parseJoinLink(text.replace('/own/', '/join/')) : null
