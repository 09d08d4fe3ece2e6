/** Drawings of a board: its places from either side, a part of it, and its parts by height. */
package lowfirst.sheet.map;
