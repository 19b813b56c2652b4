export { clubStudy } from './sample-study.ts';
