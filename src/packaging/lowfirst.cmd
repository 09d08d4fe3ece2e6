@echo off
rem Starts Lowfirst from its own image.
setlocal
rem New objects in little memory stay near the processor.
rem The better compiler is worth its work only where a verb runs for long. The quick one does best for a second's work when
rem it begins early and copies little code into its callers; any is worth its work only on what is run often.
set "quick=-XX:TieredStopAtLevel=1 -XX:C1MaxInlineSize=20"
set "often=-XX:CompileThresholdScaling=0.6"
if "%~1"=="code" set "often=-XX:CompileThresholdScaling=4"
if "%~1"=="bench" set "quick=" & set "often="
if "%~1"=="swap" set "quick=" & set "often="
"%~dp0java.exe" -XX:+UseSerialGC -Xmn24m -XX:-UsePerfData %quick% %often% -Xlog:disable -Xlog:all=off "-Dorg.sqlite.lib.path=%~dp0..\lib" -m lowfirst/lowfirst.cli.Main %*
