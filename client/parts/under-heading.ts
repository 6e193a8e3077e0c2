/** What is left to say of a text under a heading that it begins with: of "Player 2 name" under "Player 2" the "name". */
export const underHeading = (heading: string, text: string): string =>
  heading !== '' && text.startsWith(heading) ? text.slice(heading.length).replace(/^:? /, '') : text
