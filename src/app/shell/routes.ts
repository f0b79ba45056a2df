import { routes as curing } from '#app/curing/routes.ts';
import { BenchScreen } from '#app/laying-up/bench/bench-screen.tsx';
import { routes as layingUp } from '#app/laying-up/routes.ts';
import { routes as made } from '#app/made/routes.ts';
import { routes as phone } from '#app/phone/routes.ts';
import { routes as planning } from '#app/planning/routes.ts';
import { routes as stock } from '#app/stock/routes.ts';
import type { Route, ScreenType } from './route.ts';

/** The first screen is in the first script; the others come from the cache a moment later, or when they are asked for. */
export const firstScreen: ScreenType = BenchScreen;

/** Each room says its own. */
export const routes: readonly Route[] = [layingUp, planning, curing, made, stock, phone].flat();
