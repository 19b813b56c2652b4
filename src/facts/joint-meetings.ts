export { type Meeting, meetingsOf } from '../bonding/joint-id.ts';
