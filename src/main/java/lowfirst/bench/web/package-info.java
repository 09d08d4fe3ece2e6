/** Requests, answers, and who may ask. The HTTP server here and where it is started. */
package lowfirst.bench.web;
