/** Asks the browser to keep what this phone holds; false where it refuses or cannot say. */
export async function askToKeepStorage(): Promise<boolean> {
  try {
    const storage: StorageManager | undefined = navigator.storage
    if (!storage?.persist) return false
    return (await storage.persisted()) || (await storage.persist())
  } catch {
    return false
  }
}
