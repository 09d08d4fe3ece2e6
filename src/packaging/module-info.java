/**
 * The program and its libraries as one module, for the image alone: what lies in a runtime's own
 * modules file needs no class path, so the archive of its classes holds wherever the image is put.
 *
 * <p>Every service that a library looks up must be named here, or looking it up fails; {@code
 * JarIT} holds what is provided to the libraries.
 */
open module lowfirst {
  requires java.desktop;
  requires java.logging;
  requires java.management;
  requires java.naming;
  requires java.security.jgss;
  requires java.sql;
  requires jdk.httpserver;

  uses org.apache.commons.compress.archivers.ArchiveStreamProvider;
  uses org.apache.commons.compress.compressors.CompressorStreamProvider;
  uses org.apache.commons.logging.LogFactory;
  uses org.postgresql.shaded.com.ongres.stringprep.Profile;
  uses org.slf4j.spi.SLF4JServiceProvider;

  provides java.sql.Driver with
      org.sqlite.JDBC,
      org.postgresql.Driver;
  provides javax.xml.stream.XMLEventFactory with
      com.fasterxml.aalto.stax.EventFactoryImpl;
  provides javax.xml.stream.XMLInputFactory with
      com.fasterxml.aalto.stax.InputFactoryImpl;
  provides javax.xml.stream.XMLOutputFactory with
      com.fasterxml.aalto.stax.OutputFactoryImpl;
  provides org.slf4j.spi.SLF4JServiceProvider with
      org.slf4j.nop.NOPServiceProvider;
}
