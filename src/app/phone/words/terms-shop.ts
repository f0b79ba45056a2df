import * as picture from './pictures/shop.tsx';
import type { Term } from './term.ts';

export const shopTerms: readonly Term[] = [
  {
    id: 'plan',
    name: 'Plan and build',
    also: 'recipe, drawing, job',
    says: 'A plan says how one kind of tube is made. A build is one making of it, like Upper mast no. 3. A build keeps the plan as it was when it began, whatever you change later.',
    Picture: picture.PlanAndBuild,
  },
  {
    id: 'route',
    name: 'Route',
    also: 'traveler, checklist, stages, steps',
    says: 'All steps of a build in their order, ticked as they are done, each with its time. It comes from a checklist on the shelf, which you change to how you work.',
    Picture: picture.Route,
  },
  {
    id: 'time-line',
    name: 'Time line',
    also: 'journal, log, history, record',
    says: 'Everything that was entered of a build, in order. A slip is corrected by a new line, and the old one stays to be seen, struck through.',
  },
  {
    id: 'masking',
    name: 'Masking',
    also: 'edge tape, fray',
    says: 'Tape along the edges of a piece, so that it does not fray. Cut down the middle of it. Take it off before the cloth is weighed and rolled.',
    Picture: picture.Masking,
  },
  {
    id: 'head-to-tail',
    name: 'Head to tail',
    also: 'nest, nesting, layout, turned end for end',
    says: 'Tapering pieces laid the opposite way round beside each other, so that less of the roll is wasted. The warp still runs along the roll.',
    Picture: picture.HeadToTail,
  },
  {
    id: 'selvage',
    name: 'Selvage',
    also: 'roll width, woven edge',
    says: 'The woven edge at both sides of a roll. It is thicker than the cloth, so it is left out of the pieces.',
    Picture: picture.Selvage,
  },
  {
    id: 'offcut',
    name: 'Offcut',
    also: 'scrap, remnant, trimmings, end trim',
    says: 'What is left when a piece or a tube’s end is cut off. Offcuts of a cured tube go on the scale too, or the cloth in them would count as resin.',
    Picture: picture.Offcut,
  },
  {
    id: 'lot',
    name: 'Lot',
    also: 'stock, roll, can, bottle, reel, batch number',
    says: 'One roll, can, bottle or reel with a label of its own. Builds take from it, so the shelf knows what is left, and later you can tell which tubes came out of a bad can.',
    Picture: picture.Lot,
  },
  {
    id: 'shop-figures',
    name: 'What this shop does',
    also: 'shop factors, median, own figures, the book',
    says: 'Figures from your own builds: your loss in a cup, your ply, your squeeze. The middle one counts, so one bad day does not move it. Until you have some, common ones stand in: the book’s.',
    Picture: picture.ShopFigure,
  },
  {
    id: 'structure',
    name: 'Structure and budget',
    also: 'ledger, assembly, weight budget, parts list',
    says: 'What the tubes are for, like a mast set, and what all of it may weigh. Tubes that were weighed count as they are, the others as planned.',
  },
  {
    id: 'balance-point',
    name: 'Balances at',
    also: 'balance point, center of gravity, CG',
    says: 'Where the finished structure would lie level on an edge. Give each part its place along the structure and it is worked out.',
    Picture: picture.BalancePoint,
  },
];
