/** Why the server does not start, in one line for whoever started it. */
export class StartFault extends Error {}

/** Another process has the data folder. */
export class FolderHeld extends StartFault {}
