import { deskWalls } from './desk-walls.ts';
import { openWalls } from './open-walls.ts';
import { runnerWalls } from './runner-walls.ts';
import type { Walls } from './wall.ts';

/** Who gets what from every page, form and address. A route that has no line here fails a test. */
export const walls: Walls = { ...openWalls, ...runnerWalls, ...deskWalls };
