/** The words that several sheets share: amounts, designators, markings, how a part goes in. */
package lowfirst.sheet.wording;
