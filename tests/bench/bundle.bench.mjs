// What a first visit has to load, in gzip bytes, against the budget: node tests/bench/bundle.bench.mjs
import '../../scripts/size.mjs';
