const answerWithinMs = 3_000

/**
 * Asks once more for what this page could not fetch. Where the server answers and it is still not there, the page is of
 * another version than the server: it is opened anew. Without an answer it stays, since nothing else may keep it.
 */
export async function renewPage(again: () => Promise<boolean>): Promise<void> {
  if (!(await again()) && (await doesServerAnswer())) location.reload()
}

async function doesServerAnswer(): Promise<boolean> {
  const request = fetch('/healthz', { cache: 'no-store', signal: AbortSignal.timeout(answerWithinMs) })
  return request.then(
    ({ ok }) => ok,
    () => false,
  )
}
