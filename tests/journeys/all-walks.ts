import { deskWalks } from './desk-stops.ts';
import { prompterWalks } from './prompter-stops.ts';
import { walks, type Walk } from './stops.ts';

/** Every page and every state of it, wherever what is looked at holds for all of them. */
export const allWalks: readonly Walk[] = [...walks, ...prompterWalks, ...deskWalks];
