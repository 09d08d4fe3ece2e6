@echo off
rem Starts Lowfirst from its own image.
setlocal
rem New objects in little memory stay near the processor.
rem The better compiler is worth its work only where a verb runs for long, any compiler only what is run often.
set "quick=-XX:TieredStopAtLevel=1"
if "%~1"=="bench" set "quick="
if "%~1"=="swap" set "quick="
if "%~1"=="code" set "quick=%quick% -XX:CompileThresholdScaling=4"
"%~dp0java.exe" -XX:+UseSerialGC -Xmn24m -XX:-UsePerfData %quick% -Xlog:disable -Xlog:all=off "-Dorg.sqlite.lib.path=%~dp0..\lib" -m lowfirst/lowfirst.cli.Main %*
