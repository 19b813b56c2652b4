declare const EVENGROUND_VERSION: string | undefined;

/** Version of the package; set when the command is built. */
export const version: string = typeof EVENGROUND_VERSION === 'undefined' ? '0.0.0' : EVENGROUND_VERSION;
