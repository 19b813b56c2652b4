import { onceForText } from '../units/once-for-text.ts';

/** What people sit in and what feeds them, by the words that owners type. */
const shelters = /generator|shelter|vehicle|trailer|caravan|van\b|truck|car\b|container/i;

/** Whether a part of this kind is a shelter, a vehicle or a generator. */
export const isShelter: (kind: string) => boolean = onceForText((kind) => shelters.test(kind));
