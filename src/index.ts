/** What the library offers; nothing else is public. */
export { findBrowser } from './shell/find-browser.ts';
export { readSite } from './site/read-site.ts';
export { runStudy } from './study/run-study.ts';
export type { Study } from './study/study.ts';
