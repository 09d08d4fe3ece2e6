/** XML within bounds: no document types, no entities, limited depth and size. */
package lowfirst.intake.xml;
